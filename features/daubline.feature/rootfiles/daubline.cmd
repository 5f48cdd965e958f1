@echo off
rem daubline [window [STUDY]]   opens the workbench
rem daubline COMMAND ...        runs one command; daubline --help lists them
rem Needs Java 21 or newer: in DAUBLINE_JAVA, in JAVA_HOME or on the path.
setlocal
set "here=%~dp0"
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
if defined DAUBLINE_JAVA set "java=%DAUBLINE_JAVA%"
set "common=--enable-native-access=ALL-UNNAMED -Dstdout.encoding=UTF-8 -Dstderr.encoding=UTF-8"
set "logging=-Djava.util.logging.config.file=%here%logging.properties"
if "%~1"=="" goto window
if /i "%~1"=="window" goto window
"%java%" %common% "%logging%" -XX:TieredStopAtLevel=1 -Djava.awt.headless=true -cp "%here%plugins\*" daubline.cli.Main %*
exit /b %errorlevel%

:window
set "home=%USERPROFILE%\.daubline"
if defined DAUBLINE_HOME set "home=%DAUBLINE_HOME%"
if not exist "%home%" mkdir "%home%"
set "study="
if not "%~2"=="" set study=-study "%~2"
for %%f in ("%here%plugins\org.eclipse.equinox.launcher_*.jar") do set "launcher=%%f"
:again
set "language="
if exist "%home%\language" set /p language=<"%home%\language"
if defined language set "language=-nl %language%"
"%java%" %common% "%logging%" -Xmx2g "-Ddaubline.home=%home%" -jar "%launcher%" -configuration "%here%configuration" %language% -nosplash -name Daubline %study%
rem the window asks for a restart, after a change of language or text size, by exit code 23
if %errorlevel%==23 goto again
exit /b %errorlevel%
