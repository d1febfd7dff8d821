package boilwright.dashboard.band;

public final class TimeBand extends javafx.scene.layout.HBox {
    private final javafx.scene.control.Slider slider = new javafx.scene.control.Slider();

    public TimeBand() {
        getChildren().add(slider);
        setHgrow(slider, javafx.scene.layout.Priority.ALWAYS);
    }

    public void setTimeline(boilwright.dashboard.model.RunTimeline t) {
        slider.setMax(t.endS());
    }

    public javafx.beans.property.DoubleProperty cursorSProperty() {
        return slider.valueProperty();
    }

    public void play() {}

    public void pause() {}

    public javafx.beans.property.BooleanProperty playingProperty() {
        return slider.disableProperty();
    }
}
