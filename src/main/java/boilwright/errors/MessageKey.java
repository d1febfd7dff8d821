package boilwright.errors;

/**
 * Every sentence the program can say about something that went wrong or needs a warning. The number is how many values
 * its pattern takes. The pattern's key in the bundle is the name in lower case with hyphens.
 */
public enum MessageKey {
    // --- units: numbers, spellings, likely slips
    /** {0} what is wanted, with its article; {1} an example. */
    QUANTITY_EMPTY(2),
    /** {0} the text; {1} an example. */
    NUMBER_MISSING(2),
    /** {0} the text; {1} an example. */
    NUMBER_NOT_UNDERSTOOD(2),
    /** {0} the text; {1} an example. */
    NUMBER_NOT_FINITE(2),
    /** {0} the text. */
    NUMBER_OUT_OF_REACH(1),
    /** {0} the text; {1} the number as it was probably meant. */
    NUMBER_WITH_COMMA(2),
    /** {0} the text; {1} the number if the comma is a decimal one; {2} if it parts thousands. */
    NUMBER_WITH_UNCLEAR_COMMA(3),
    /** {0} the text; {1} the number as it was probably meant. */
    NUMBER_WITH_BLANK(2),
    /** {0} the text; {1} the number as it is to be written. */
    NUMBER_POWER_WRITTEN_OUT(2),
    /** {0} the text; {1} the number it says; {2} the number probably meant. */
    NUMBER_SLIPPED_EXPONENT(3),
    /** {0} the text; {1} what is wanted, with its article; {2} accepted units. */
    UNIT_MISSING(3),
    /** {0} the unit found; {1} what is wanted, with its article; {2} accepted units. */
    UNIT_UNKNOWN(3),
    /** {0} the unit found; {1} nearest accepted spelling; {2} what is wanted, with its article; {3} accepted units. */
    UNIT_UNKNOWN_NEAREST(4),
    /** {0} the text; {1} what its unit measures; {2} what is wanted; {3} accepted units. */
    UNIT_OF_OTHER_DIMENSION(4),
    /** {0} the text; {1} absolute zero in its unit. */
    BELOW_ABSOLUTE_ZERO(2),

    // --- rig: fields and files

    /** {0} file. */
    RIG_FILE_MISSING(1),
    /** {0} file. */
    RIG_FILE_IS_FOLDER(1),
    /** {0} file, {1} why. */
    RIG_FILE_UNREADABLE(2),
    /** {0} file, {1} its size, {2} the greatest size. */
    RIG_FILE_TOO_LARGE(3),
    /** {0} file. */
    RIG_FILE_EMPTY(1),
    /** {0} file, {1} what was found. */
    RIG_FILE_NOT_TEXT(2),
    /** {0} name, {1} the demo rigs. */
    RIG_DEMO_UNKNOWN(2),
    /** {0} name, {1} the demo rigs, {2} the nearest. */
    RIG_DEMO_UNKNOWN_NEAR(3),
    /** {0} file, {1} why. */
    RIG_SAVE_FAILED(2),
    /** {0} file, {1} line, {2} column, {3} path of what was open. */
    RIG_JSON_TRUNCATED(4),
    /** {0} file, {1} line, {2} column, {3} the text there. */
    RIG_JSON_BROKEN(4),
    /** {0} file, {1} greatest depth, {2} line. */
    RIG_JSON_DEEP(3),
    /** {0} file, {1} line, {2} column. */
    RIG_JSON_OVERLONG(3),
    /** {0} file, {1} line, {2} column. */
    RIG_JSON_TRAILING(3),
    /** {0} place, {1} found. */
    RIG_NOT_AN_OBJECT(2),
    /** {0} place, {1} current version. */
    RIG_FORMAT_MISSING(2),
    /** {0} place, {1} version found, {2} newest known. */
    RIG_FORMAT_NEWER(3),
    /** {0} place, {1} found, {2} newest known. */
    RIG_FORMAT_UNKNOWN(3),
    /** {0} place, {1} path, {2} line of the first. */
    RIG_FIELD_DOUBLED(3),
    /** {0} place, {1} path, {2} accepted names. */
    RIG_FIELD_UNKNOWN(3),
    /** {0} place, {1} path, {2} accepted names, {3} the nearest. */
    RIG_FIELD_UNKNOWN_NEAR(4),
    /** {0} place, {1} path, {2} the kind, {3} kinds that have it. */
    RIG_FIELD_OF_ANOTHER_KIND(4),
    /** {0} place, {1} path, {2} what it means, {3} what is accepted. */
    RIG_FIELD_MISSING(4),
    /** {0} place, {1} path, {2} found, {3} what is accepted. */
    RIG_FIELD_TYPE(4),
    /** {0} place, {1} path, {2} found, {3} an example, {4} accepted units. */
    RIG_FIELD_NEEDS_UNIT(5),
    /** {0} place, {1} path, {2} what is wrong with the quantity. */
    RIG_FIELD_QUANTITY(3),
    /** {0} place, {1} path, {2} what is doubtful about the quantity. */
    RIG_FIELD_QUANTITY_SLIP(3),
    /** {0} place, {1} path, {2} found, {3} likely meaning, {4} least, {5} greatest. */
    RIG_FIELD_RANGE_SLIP(6),
    /** {0} place, {1} path, {2} found, {3} least, {4} greatest. */
    RIG_FIELD_RANGE(5),
    /** {0} place, {1} path, {2} found, {3} likely meaning, {4} usual least, {5} usual greatest. */
    RIG_FIELD_SLIP(6),
    /** {0} place, {1} path, {2} number of characters, {3} fewest, {4} most. */
    RIG_TEXT_LENGTH(5),
    /** {0} place, {1} path, {2} found. */
    RIG_TEXT_CONTROL(3),
    /** {0} place, {1} path, {2} number of entries, {3} fewest, {4} most. */
    RIG_LIST_LENGTH(5),
    /** {0} place, {1} path, {2} found, {3} accepted. */
    RIG_CHOICE_UNKNOWN(4),
    /** {0} place, {1} path, {2} found, {3} accepted, {4} the nearest. */
    RIG_CHOICE_UNKNOWN_NEAR(5),
    /** {0} option, {1} what was typed after it. */
    RIG_EDIT_FORM(2),
    /** {0} place, {1} first value, {2} second value. */
    RIG_EDIT_DOUBLED(3),
    /** {0} place, {1} list, {2} number of its entries, {3} first entry, {4} last entry. */
    RIG_EDIT_ENTRY(5),
    /** {0} place, {1} list. */
    RIG_EDIT_EMPTY_LIST(2),
    /** {0} place, {1} field. */
    RIG_EDIT_NO_LIST(2),
    /** {0} field named after --accept. */
    RIG_ACCEPT_UNKNOWN(1),
    /** {0} field named after --accept, {1} the nearest. */
    RIG_ACCEPT_UNKNOWN_NEAR(2),
    /** {0} place, {1} path, {2} found, {3} column height. */
    RIG_STAGE_ABOVE_COLUMN(4),
    /** {0} place, {1} path, {2} found, {3} stage below, {4} its height. */
    RIG_STAGE_ORDER(5),
    /** {0} place, {1} path, {2} name. */
    RIG_STAGE_NAME_DOUBLED(3),
    /** {0} place, {1} path, {2} outer edge of the throat, {3} inner diameter of the body. */
    RIG_THROAT_WIDER_THAN_BODY(4),
    /** {0} place, {1} path, {2} gap, {3} mean diameter. */
    RIG_THROAT_GAP_CLOSED(4),
    /** {0} place, {1} path, {2} outer diameter, {3} inner diameter of the body. */
    RIG_COLUMN_WIDER_THAN_BODY(4),
    /** {0} place, {1} path, {2} found, {3} lowest stage, {4} its height. */
    RIG_UNCOOLED_ABOVE_STAGE(5),
    /** {0} place, {1} path, {2} stage. */
    RIG_STAGE_COVERED_TWICE(3),
    /** {0} place, {1} path. */
    RIG_CAP_COIL_WITHOUT_CAP(2),
    /** {0} place, {1} path, {2} found, {3} pool depth, {4} greatest depth. */
    RIG_CHARGE_TOO_DEEP(5),
    /** {0} place, {1} path, {2} found, {3} greatest. */
    RIG_HEATED_AREA_TOO_LARGE(4),
    /** {0} place, {1} path, {2} found, {3} heated area. */
    RIG_CONTACT_LARGER_THAN_HEATED(4),
    /** {0} place, {1} path, {2} found, {3} boiler material. */
    RIG_CONTACT_MISFIT(4),
    /** {0} place, {1} path, {2} boiler material, {3} kind of source. */
    RIG_CLAMPED_ON_GLASS(4),
    /** {0} place, {1} path, {2} material. */
    RIG_COIL_ON_GLASS(3),
    /** {0} place, {1} path, {2} boiler material. */
    RIG_SUSCEPTOR_NOT_FERROUS(3),
    /** {0} place, {1} path, {2} found. */
    RIG_SCHEDULE_START(3),
    /** {0} place, {1} path, {2} found, {3} time of the step before. */
    RIG_SCHEDULE_ORDER(4),
    /** {0} place, {1} path. */
    RIG_SCHEDULE_ONE_OF(2),
    /** {0} place, {1} path, {2} found, {3} rated power. */
    RIG_POWER_ABOVE_RATED(4),
    /** {0} place, {1} path, {2} found, {3} room temperature. */
    RIG_HOLD_BELOW_ROOM(4),
    /** {0} place, {1} path, {2} found. */
    RIG_WATER_WITHOUT_ELEMENTS(3),
    /** {0} place, {1} path, {2} found, {3} the other limit. */
    RIG_LIMITS_CROSSED(4),
    /** {0} place, {1} path, {2} found, {3} air pressure. */
    RIG_FORELINE_ABOVE_ROOM(4),
    /** {0} place, {1} path, {2} found. */
    RIG_GUESS_UNKNOWN(3),
    /** {0} place, {1} path, {2} found, {3} the nearest. */
    RIG_GUESS_UNKNOWN_NEAR(4),
    /** {0} place, {1} path, {2} found. */
    RIG_GUESS_DOUBLED(3),
    /** {0} place, {1} path, {2} path since format 2. */
    RIG_FIELD_MOVED(3),
    /** {0} place, {1} path. */
    RIG_CAPACITY_TWICE(2),
    /** {0} place, {1} path. */
    RIG_CAPACITY_MISSING(2),
    /** {0} place, {1} path, {2} kind of supply. */
    RIG_SUPPLY_WITHOUT_ELEMENTS(3),
    /** {0} place, {1} path. */
    RIG_CIRCUIT_COOLS_NOTHING(2),
    /** {0} place, {1} path, {2} number of entries. */
    RIG_ELEMENTS_WITHOUT_WATER(3),
    /** {0} place, {1} path, {2} found, {3} least, {4} greatest. */
    RIG_NO_WAY_FOR_WATER(5),
    /** {0} place, {1} path, {2} name, {3} the other element. */
    RIG_ELEMENT_NAME_DOUBLED(4),
    /** {0} place, {1} path, {2} kind, {3} the other element. */
    RIG_ELEMENT_DOUBLED(4),
    /** {0} place, {1} path, {2} branch, {3} element after which it was left. */
    RIG_BRANCH_MET_AGAIN(4),
    /** {0} place, {1} path, {2} branch. */
    RIG_BRANCH_ALONE(3),
    /** {0} place, {1} path, {2} found, {3} flow before. */
    RIG_PUMP_CURVE_ORDER(4),
    /** {0} place, {1} path, {2} found, {3} head before. */
    RIG_PUMP_CURVE_RISING(4),
    /** {0} place, {1} path, {2} found, {3} entry before. */
    RIG_TABLE_ORDER(4),
    /** {0} place, {1} path, {2} water temperatures found, {3} those of the first room. */
    RIG_TABLE_GRID(4),
    /** {0} place, {1} path, {2} found, {3} least, {4} greatest. */
    RIG_TABLE_OUTSIDE(5),
    /** {0} place, {1} path, {2} found, {3} rating, {4} greatest distance. */
    RIG_RATING_FAR(5),
    /** {0} place, {1} path, {2} found, {3} room temperature. */
    RIG_CHILLER_WITHOUT_CAPACITY(4),
    /** {0} place, {1} path, {2} found. */
    RIG_ICE_IN_WARM_WATER(3),
    /** {0} place, {1} path, {2} found, {3} its volume, {4} volume of water. */
    RIG_ICE_ABOVE_WATER(5),
    /** {0} place, {1} path, {2} found, {3} pitch. */
    RIG_FINS_CLOSED(4),

    // --- fluid: data files and ranges

    /** {0} id found, {1} ids there are. */
    FLUID_UNKNOWN(2),
    /** {0} id found, {1} the nearest one, {2} ids there are. */
    FLUID_UNKNOWN_NEAREST(3),
    /** {0} file or folder, {1} why, as half a sentence. */
    FLUID_FILE_UNREADABLE(2),
    /** {0} file, {1} most bytes. */
    FLUID_FILE_TOO_LONG(2),
    /** {0} file, {1} line, {2} column, {3} the parser's words. */
    FLUID_FILE_NOT_JSON(4),
    /** {0} file. */
    FLUID_FILE_EMPTY(1),
    /** {0} file, {1} deepest nesting, or a number or text of absurd length. */
    FLUID_FILE_TOO_DEEP(2),
    /** {0} folder. */
    FLUID_FOLDER_EMPTY(1),
    /** {0} file, {1} id, {2} ids there are. */
    FLUID_ID_TAKEN(3),
    /** {0} file, {1} field path. */
    FLUID_FIELD_MISSING(2),
    /** {0} file, {1} field path, {2} accepted names. */
    FLUID_FIELD_UNKNOWN(3),
    /** {0} file, {1} field path, {2} the nearest name, {3} accepted names. */
    FLUID_FIELD_UNKNOWN_NEAREST(4),
    /** {0} file, {1} field path, {2} value found, {3} what is accepted. */
    FLUID_FIELD_REFUSED(4),
    /** {0} file, {1} field path, {2} value found, {3} the nearest accepted value, {4} accepted values. */
    FLUID_FIELD_REFUSED_NEAREST(5),
    /** {0} file, {1} field path, {2} value in SI and where, {3} and {4} what is plausible. */
    FLUID_PROPERTY_IMPLAUSIBLE(5),
    /** {0} file, {1} field path, {2} temperature in K. */
    FLUID_PROPERTY_MUST_RISE(3),
    /** {0} file, {1} field path, {2} temperature in K. */
    FLUID_PROPERTY_MUST_FALL(3),
    /** {0} file, {1} field path, {2} its range, {3} span needed. */
    FLUID_RANGE_TOO_SHORT(4),
    /** {0} file, {1} temperature in K, {2} ratio, {3} and {4} accepted. */
    FLUID_LATENT_HEAT(5),
    /** {0} fluid, {1} and {2} temperatures used in degC, {3} properties with their ranges in degC. */
    FLUID_EXTRAPOLATED(4),
    /** {0} fluid, {1} pressure in Pa. */
    FLUID_SATURATION_NOT_FOUND(2),
    /** {0} substance, {1} property, {2} temperature in K, {3} and {4} span in K. */
    PROPERTY_TEMPERATURE_OUTSIDE(5),
    /** {0} substance, {1} pressure in Pa, {2} and {3} span in Pa. */
    PROPERTY_PRESSURE_OUTSIDE(4),
    /** {0} mixture, {1} mass share found, {2} and {3} shares known. */
    GLYCOL_SHARE_OUTSIDE(4),

    // --- numerics: roots and integration
    /** {0} what is sought, {1} lower end, {2} upper end, {3} and {4} the values there (same sign). */
    ROOT_NOT_BRACKETED(5),
    /** {0} what is sought, {1} where the value is not a number. */
    ROOT_VALUE_NOT_A_NUMBER(2),
    /** {0} what is sought, {1} and {2} the ends of the last bracket. */
    ROOT_NOT_REACHED(3),
    /** {0} time in s, {1} step in s, {2} the component that is hardest to follow. */
    STEP_TOO_SMALL(3),
    /** {0} time in s, {1} step in s, {2} the component that was hardest to follow before. */
    STEP_LEAVES_RANGE(3),
    /** {0} how many steps were taken, {1} time in s. */
    STEPS_USED_UP(2),
    /** {0} time in s, {1} the number of the event, {2} how many events happened without time going on. */
    EVENTS_WITHOUT_PROGRESS(3),
    /** {0} time in s: the state there is not one that can exist. */
    START_STATE_NOT_POSSIBLE(1),
    /** {0} time in s, {1} the name of the component whose derivative there is not a number. */
    DERIVATIVE_NOT_A_NUMBER(2),
    /** {0} time in s, {1} the number of the event whose value there is not a number. */
    EVENT_NOT_A_NUMBER(2),

    // --- water: circuit and supplies
    /** {0} head that the supply gives when nothing flows, {1} head that the circuit asks for then. */
    WATER_NOT_LIFTED(2),
    /** {0} branch. */
    WATER_BRANCH_WITHOUT_LOSS(1),
    /** {0} branch, {1} its rise, {2} head across it. */
    WATER_BRANCH_IDLE(3),
    /** {0} flow, {1} flow of the pump curve's last point. */
    WATER_BEYOND_PUMP_CURVE(2),
    /** {0} water, {1} room asked for, {2} and {3} coldest and warmest water known, {4} and {5} the same of the room. */
    WATER_CAPACITY_UNKNOWN(6),

    // --- thermal: the model and its results
    /** {0} oil temperature in degC, {1} rounds tried. */
    COLUMN_NOT_AT_REST(2),
    /** {0} oil temperature in degC, {1} rounds tried. */
    WALLS_NOT_AT_REST(2),

    /** {0} rounds tried. */
    JET_MODES_NOT_SETTLED(1),
    /** {0} what did not close, {1} closure found, {2} closure allowed. */
    ENERGY_NOT_CLOSED(3),

    // --- answers: margins and verdicts

    // --- choice: sizing and comparing
    /** {0} rig. */
    CHOICE_NO_REST(1),
    /** {0} option, {1} text, {2} and {3} the ends accepted. */
    CHOICE_OPTION_RANGE(4),
    /** {0} option. */
    CHOICE_ACCEPT_ALONE(1),
    /** {0} file. */
    SOURCES_FILE_IS_FOLDER(1),
    /** {0} place, {1} what the file holds. */
    SOURCES_NOT_AN_OBJECT(2),
    /** {0} place, {1} field, {2} what is accepted. */
    SOURCES_FIELD_MISSING(3),
    /** {0} place, {1} field, {2} id. */
    SOURCES_ID_TAKEN(3),
    /** {0} place, {1} field, {2} first, {3} second. */
    SOURCES_RANGE_REVERSED(4),

    // --- estimate: rigs from outside measurements

    /** Both throat gaps and a working power were given. */
    ESTIMATE_GAPS_AND_POWER(0),
    /** {0} number of gaps, {1} number of stages. */
    ESTIMATE_GAPS_COUNT(2),

    // --- report and command line

    /** {0} file. */
    NEW_FILE_EXISTS(1),
    /** Both no water and a water flow. */
    NEW_WATER_WITHOUT_JACKET(0),

    /** {0} what failed unexpectedly; no report could be written. */
    INTERNAL_FAULT(1),
    /** {0} what failed unexpectedly, {1} where the report about it is. */
    INTERNAL_FAULT_REPORTED(2),
    /** {0} file, {1} why, as half a sentence. */
    OUTPUT_NOT_WRITTEN(2),
    /** The answer could not be printed. */
    ANSWER_NOT_PRINTED(0),
    /** {0} file of the picture. */
    PICTURE_NEEDS_FONTS(1),
    /** {0} the two options, {1} the file that both name. */
    OUTPUTS_COINCIDE(2),
    /** {0} option, {1} file. */
    OUTPUT_OVER_INPUT(2),
    /** {0} option, {1} what it was given. */
    PATH_NOT_UNDERSTOOD(2),
    /** There is no screen to show a window on. */
    NO_SCREEN(0),
    /** {0} page asked for, {1} pages there are. */
    PAGE_UNKNOWN(2),
    /** {0} theme asked for. */
    THEME_UNKNOWN(1),
    /** {0} size asked for, {1} least, {2} greatest. */
    SIZE_NOT_UNDERSTOOD(3),
    /** {0} why the rig has no answer. */
    PICTURE_WITHOUT_ANSWER(1),
    /** {0} fault asked for, {1} why this rig can't have it. */
    DRILL_NOT_HERE(2),
    /** {0} what was given, {1} what is needed. */
    DRILL_WHICH(2),
    /** {0} fault asked for, {1} faults there are. */
    DRILL_UNKNOWN(2),
    /** {0} option, {1} what it was given, {2} what is wrong with it. */
    OPTION_NOT_UNDERSTOOD(3),
    /** {0} option, {1} what it was given, {2} shortest, {3} longest time. */
    OPTION_TIME_OUTSIDE(4),
    /** {0} what the usage check found, {1} command whose help to read. */
    USAGE_REFUSED(2),
    /** {0} what was typed, {1} command whose help to read. */
    ARGUMENT_UNKNOWN(2),
    /** {0} what was typed, {1} nearest word that is known, {2} command whose help to read. */
    ARGUMENT_UNKNOWN_NEAR(3),
    /** Stopped by the person. */
    STOPPED(0),

    // --- gas side: chamber, line, backing pump, outgassing
    /** {0} place, {1} path, {2} found, {3} diameter of the ring. */
    RIG_CORD_TOO_THICK(4),
    /** {0} place, {1} path, {2} lowest, {3} highest. */
    RIG_GAUGE_RANGE(4),
    /** {0} place, {1} path, {2} with ballast, {3} without. */
    RIG_BALLAST_BETTER(4),
    /** {0} place, {1} path, {2} found, {3} pressure before. */
    RIG_CURVE_ORDER(4),
    /** {0} place, {1} path, {2} name, {3} what has it already. */
    RIG_PIECE_NAME_TAKEN(4),
    /** {0} place, {1} path, {2} found. */
    RIG_TUBE_WITHOUT_LENGTH(3),
    /** {0} place, {1} path, {2} found. */
    RIG_REDUCER_STRAIGHT(3),
    /** {0} place, {1} path, {2} found, {3} most that the bore passes. */
    RIG_VALVE_TOO_GOOD(4),
    /** {0} place, {1} path, {2} found, {3} widest pitch that hides what lies behind. */
    RIG_BAFFLE_OPEN(4),
    /** {0} balance found, {1} balance allowed. */
    GAS_NOT_CLOSED(2),
    /** {0} material asked for, {1} materials known. */
    MATERIAL_UNKNOWN(2),
    /** {0} rig. */
    RIG_WITHOUT_VACUUM(1),
    /** {0} gas asked for, {1} gases known. */
    GAS_UNKNOWN(2),

    // --- pressure-rise test: records, and the options of its command
    /** {0} place, {1} why, as half a sentence. */
    RISE_FILE_UNREADABLE(2),
    /** {0} place, {1} greatest size. */
    RISE_FILE_TOO_LARGE(2),
    /** {0} place. */
    RISE_FILE_EMPTY(1),
    /** {0} place, {1} what was found. */
    RISE_FILE_NOT_TEXT(2),
    /** {0} place. */
    RISE_FILE_BROKEN(1),
    /** {0} place, {1} number of further faults. */
    RISE_MORE_FAULTS(2),
    /** {0} place. */
    RISE_HEADER_MISSING(1),
    /** {0} place, {1} quantity, {2} examples of its name, {3} names found. */
    RISE_COLUMN_MISSING(4),
    /** {0} place, {1} quantity, {2} and {3} the names. */
    RISE_COLUMN_DOUBLED(4),
    /** {0} place, {1} name, {2} examples with a unit. */
    RISE_COLUMN_WITHOUT_UNIT(3),
    /** {0} place, {1} name, {2} what is wrong with its unit. */
    RISE_COLUMN_UNIT(3),
    /** {0} place, {1} cells found, {2} columns. */
    RISE_ROW_LENGTH(3),
    /** {0} place. */
    RISE_CELL_BLANK(1),
    /** {0} place, {1} found. */
    RISE_CELL_TEXT(2),
    /** {0} place, {1} found. */
    RISE_CELL_CLOCK(2),
    /** {0} place, {1} found. */
    RISE_CELL_WITH_UNIT(2),
    /** {0} place, {1} what is wrong with the number. */
    RISE_CELL_REFUSED(2),
    /** {0} place, {1} what is doubtful about the number, {2} word to accept it with. */
    RISE_CELL_SLIP(3),
    /** {0} place, {1} found. */
    RISE_PRESSURE_NOT_POSITIVE(2),
    /** {0} place, {1} found. */
    RISE_PRESSURE_ABOVE_AIR(2),
    /** {0} place, {1} found, {2} time before. */
    RISE_TIME_BACK(3),
    /** {0} place, {1} number found, {2} fewest. */
    RISE_TOO_FEW_ROWS(3),
    /** {0} place, {1} most. */
    RISE_TOO_MANY(2),
    /** {0} place, {1} column, {2} length of the record, {3} likely meaning, {4} what is usual. */
    RISE_TIME_SLIP(5),
    /** {0} place, {1} column, {2} first reading, {3} likely meaning, {4} what is usual. */
    RISE_PRESSURE_SLIP(5),
    /** {0} place, {1} what is wrong with the quantity. */
    RISE_VOLUME_REFUSED(2),
    /** {0} place, {1} what is doubtful about the quantity. */
    RISE_VOLUME_DOUBTFUL(2),
    /** {0} place, {1} found, {2} likely meaning, {3} what is usual. */
    RISE_VOLUME_SLIP(4),
    /** {0} place, {1} found, {2} least, {3} greatest. */
    RISE_VOLUME_RANGE(4),
    /** {0} place, {1} accepted words. */
    RISE_ACCEPT_UNKNOWN(2),

    // --- uncertainty runs
    /** {0} id given. */
    SPREAD_RANGE_UNKNOWN(1),
    /** {0} id, {1} low, {2} high. */
    SPREAD_RANGE_REVERSED(3),
    /** {0} id, {1} low, {2} high, {3} least and {4} greatest accepted. */
    SPREAD_RANGE_OUTSIDE(5),
    /** {0} id. */
    SPREAD_RANGE_TWICE(1),
    /** {0} option, {1} what it was given, {2} fewest, {3} most. */
    SPREAD_NUMBER_OUTSIDE(4),
    /** {0} text given. */
    SPREAD_RANGE_FORM(1),
    /** {0} samples, {1} threads, {2} how long they take. */
    SPREAD_TAKES_LONG(3),
    /** {0} samples, {1} most. */
    SPREAD_BANDS_TOO_MANY(2),

    // --- plans that are read or asked for
    /** {0} file, {1} why. */
    PLAN_UNREADABLE(2),
    /** {0} file, {1} most. */
    PLAN_TOO_LARGE(2),
    /** {0} file, {1} line and column, {2} what the reader says. */
    PLAN_NOT_JSON(3),
    /** {0} file, {1} place in it, {2} what was found, {3} what is accepted. */
    PLAN_FIELD(4),
    /** {0} file, {1} variant in it, {2} variant asked for. */
    PLAN_OTHER_VARIANT(3),
    /** {0} option, {1} found, {2} accepted. */
    PLAN_OPTION(3),
    /** {0} file that was not written. */
    PLAN_NO_SHEET(1),

    // --- run logs, and what is entered during a run
    /** {0} file, {1} why. */
    RUN_LOG_UNREADABLE(2),
    /** {0} file, {1} most. */
    RUN_LOG_TOO_LARGE(2),
    /** {0} file, {1} line, {2} column, {3} what was found, {4} what is accepted. */
    RUN_LOG_REFUSED(5),
    /** {0} file. */
    RUN_LOG_IN_USE(1),
    /** {0} file, {1} rig and variant in it, {2} rig and variant of the plan. */
    RUN_LOG_OTHER_PLAN(3),
    /** {0} file, {1} why, {2} number of lines kept. */
    RUN_LOG_NOT_WRITTEN(3),
    /** {0} quantity, {1} what is wrong with the text. */
    RUN_READING_REFUSED(2),
    /** {0} quantity, {1} found, {2} least, {3} greatest. */
    RUN_READING_RANGE(4),
    /** {0} quantity, {1} found, {2} computed for now, {3} likely meaning. */
    RUN_READING_SLIP(4);

    private final int argumentCount;

    MessageKey(int argumentCount) {
        this.argumentCount = argumentCount;
    }

    /** How many values the sentence takes. */
    public int argumentCount() {
        return argumentCount;
    }

    /** The sentence's key in the resource bundle. */
    public String bundleKey() {
        return Sentences.bundleKey(this);
    }
}
