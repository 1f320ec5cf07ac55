@echo off
rem Starts the program from a clone after "mvn -q package"; see the file eddyreach beside this one.
setlocal
set "jar=%~dp0target\eddyreach-0.1.0-SNAPSHOT.jar"
if not exist "%jar%" (
  echo %jar% is missing; make it with: mvn -q package 1>&2
  exit /b 1
)
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
set "quiet=-Xlog:disable -Xlog:all=error:stderr -XX:+UseSerialGC"
rem an archive is named after the size of its jar; one that does not fit is ignored
for %%f in ("%jar%") do set "archive=%~dp0target\eddyreach-%%~zf.jsa"
set "made=%archive%.%RANDOM%"
if not exist "%archive%" (
  "%java%" %quiet% "-XX:ArchiveClassesAtExit=%made%" -jar "%jar%" run m18-derating --quiet --into "%made%.out" >nul 2>&1 && move /y "%made%" "%archive%" >nul 2>&1
  if exist "%made%" del /q /f "%made%"
  if exist "%made%.out" rd /s /q "%made%.out"
)
"%java%" %quiet% "-XX:SharedArchiveFile=%archive%" -jar "%jar%" %*
exit /b %ERRORLEVEL%
