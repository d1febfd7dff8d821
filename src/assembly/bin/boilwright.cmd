@echo off
rem Starts Boilwright from any folder.
setlocal
for %%i in ("%~dp0..") do set "HOME_FOLDER=%%~fi"
set "JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"
set "ARCHIVE="
if exist "%HOME_FOLDER%\lib\boilwright.jsa" set ARCHIVE=-XX:SharedArchiveFile="%HOME_FOLDER%\lib\boilwright.jsa" -Xlog:cds=off -Xlog:cds+dynamic=off
"%JAVA%" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -XX:-UsePerfData -Xmx256m -Xshare:auto -Djava.awt.headless=true -Dfile.encoding=UTF-8 %ARCHIVE% %BOILWRIGHT_JAVA_OPTIONS% -cp "%HOME_FOLDER%\lib\@{project.build.finalName}.jar;@{jars.cmd}" @{main.class} %*
exit /b %ERRORLEVEL%
