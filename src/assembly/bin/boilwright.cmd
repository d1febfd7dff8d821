@echo off
rem Starts Boilwright from any folder.
setlocal
for %%i in ("%~dp0..") do set "HOME_FOLDER=%%~fi"
set "JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"
set "KIND=boilwright"
set "MODE=-Djava.awt.headless=true -XX:TieredStopAtLevel=1 -Xmx256m"
rem Many samples are worth the second compiler's work.
if "%~1"=="spread" set "MODE=-Djava.awt.headless=true -Xmx256m"
if "%~1"=="" goto window
if "%~1"=="dashboard" goto window
goto start
:window
set "KIND=window"
set "MODE=-Xmx1g"
rem A Java that brings JavaFX itself has it in modules, which must be opened to the controls; any other would warn of them.
set "JAVA_FOLDER="
for %%i in ("%JAVA%.exe" "%JAVA%") do if not defined JAVA_FOLDER if not "%%~$PATH:i"=="" set "JAVA_FOLDER=%%~dp$PATH:i.."
if not "%JAVA%"=="java" set "JAVA_FOLDER=%JAVA_HOME%"
if not defined JAVA_FOLDER goto start
if not exist "%JAVA_FOLDER%\release" goto start
findstr /c:"javafx.graphics" "%JAVA_FOLDER%\release" >nul || goto start
set "MODE=%MODE% --add-opens=javafx.graphics/javafx.scene=ALL-UNNAMED --add-exports=javafx.base/com.sun.javafx.event=ALL-UNNAMED"
:start
set "ARCHIVE="
if exist "%HOME_FOLDER%\lib\%KIND%.jsa" set ARCHIVE=-XX:SharedArchiveFile="%HOME_FOLDER%\lib\%KIND%.jsa" -Xlog:cds=off -Xlog:cds+dynamic=off
"%JAVA%" -XX:+UseSerialGC -XX:-UsePerfData -Xshare:auto %MODE% -Dfile.encoding=UTF-8 %ARCHIVE% %BOILWRIGHT_JAVA_OPTIONS% -cp "%HOME_FOLDER%\lib\@{project.build.finalName}.jar;@{jars.cmd}" @{main.class} %*
exit /b %ERRORLEVEL%
