@echo off
rem Starts the program from a clone after "mvn -q package"; see the file eddyreach beside this one.
setlocal
set "target=%~dp0..\..\..\target\"
set "jar="
for %%f in ("%target%eddyreach-*.jar") do set "jar=%%~f"
if not defined jar (
  echo no eddyreach jar in %target%; make it with: mvn -q package 1>&2
  exit /b 1
)
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
set "quiet=-Xlog:disable -Xlog:all=error:stderr -XX:+UseSerialGC"
rem an archive is named after the size of its jar; one that does not fit is ignored
for %%f in ("%jar%") do set "archive=%target%eddyreach-%%~zf.jsa"
set "made=%archive%.%RANDOM%"
if not exist "%archive%" (
  "%java%" %quiet% "-XX:ArchiveClassesAtExit=%made%" -jar "%jar%" run m18-derating --quiet --into "%made%.out" >nul 2>&1 && move /y "%made%" "%archive%" >nul 2>&1
  if exist "%made%" del /q /f "%made%"
  if exist "%made%.out" rd /s /q "%made%.out"
)
rem one question is answered before the second compiler pays off; long studies need it
if /i "%~1"=="ask" set "quiet=%quiet% -XX:TieredStopAtLevel=1"
"%java%" %quiet% "-XX:SharedArchiveFile=%archive%" -jar "%jar%" %*
exit /b %ERRORLEVEL%
