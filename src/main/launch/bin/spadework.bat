@echo off
rem Starts Spadework from wherever its folder lies: with the Java beside it, else that of JAVA_HOME, else the one on the path.
setlocal
set "HOME_DIR=%~dp0.."
set "JAVA=java"
if exist "%HOME_DIR%\runtime\bin\java.exe" (
  set "JAVA=%HOME_DIR%\runtime\bin\java.exe"
) else if defined JAVA_HOME (
  if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"
)
set "JAR=%HOME_DIR%\app\spadework.jar"
if not exist "%JAR%" set "JAR=%HOME_DIR%\lib\spadework.jar"
"%JAVA%" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -XX:-UsePerfData -cp "%JAR%" spadework.cli.Spadework %*
exit /b %ERRORLEVEL%
