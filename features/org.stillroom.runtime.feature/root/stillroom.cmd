@echo off
rem Starts Stillroom on Windows.
rem   stillroom                     opens the workbench on the last library
rem   stillroom workbench FOLDER    opens the workbench on the library in FOLDER
rem   stillroom WORDS               is the command line; "stillroom help" lists what it can do
rem
rem   STILLROOM_JAVA_HOME  a Java installation to use before any other
rem   STILLROOM_JAVA_OPTS  more options for the Java machine, such as -Xmx4g
rem   STILLROOM_HOME       one folder for settings, window state and caches
setlocal enabledelayedexpansion
set "here=%~dp0"
set "here=%here:~0,-1%"

set "java="
call :try "%STILLROOM_JAVA_HOME%"
call :try "%JAVA_HOME%"
for /f "delims=" %%J in ('where java 2^>nul') do call :try "%%~dpJ.."
for /d %%J in ("%ProgramFiles%\Eclipse Adoptium\*" "%ProgramFiles%\Java\*" "%ProgramFiles%\Microsoft\jdk*" "%ProgramFiles%\Zulu\*" "%USERPROFILE%\.jdks\*") do call :try "%%J"
if not defined java (
  echo stillroom: needs Java 21 or newer: install one or name its folder in STILLROOM_JAVA_HOME. 1>&2
  exit /b 69
)

set "launcher="
for /f "delims=" %%L in ('dir /b "%here%\plugins\org.eclipse.equinox.launcher_*.jar" 2^>nul') do set "launcher=%here%\plugins\%%L"
if not defined launcher (
  echo stillroom: this copy is incomplete ^(no launcher in %here%\plugins^): unpack it again. 1>&2
  exit /b 69
)

if defined STILLROOM_HOME (
  set "state=%STILLROOM_HOME%\state"
  set "data=%STILLROOM_HOME%\data"
  set "cache=%STILLROOM_HOME%\cache"
) else (
  set "state=%LOCALAPPDATA%\Stillroom\state"
  set "data=%LOCALAPPDATA%\Stillroom\data"
  set "cache=%LOCALAPPDATA%\Stillroom\cache"
)
if not defined STILLROOM_EXAMPLE set "STILLROOM_EXAMPLE=%here%\corpus-example"

set "library="
set "face=command-line"
if "%~1"=="" set "face=workbench"
if /i "%~1"=="workbench" (
  set "face=workbench"
  if not "%~2"=="" (
    if not exist "%~f2\" (
      echo stillroom: there is no folder %~2 to open. 1>&2
      exit /b 69
    )
    set "library=%~f2"
  )
)

rem A copy that was replaced gets a framework cache of its own: the folder is named after its build.
set "build=0"
for %%B in ("%here%\configuration\org.eclipse.equinox.simpleconfigurator\bundles.info") do set "build=%%~tB%%~zB"
set "build=%build:/=%"
set "build=%build::=%"
set "build=%build: =%"
set "build=%build:.=%"
set "configuration=%cache%\framework\%build%\%face%"

set "common=-Xmx2g -Djava.awt.headless=true -Dfile.encoding=UTF-8 -Dstdout.encoding=UTF-8 -Dstderr.encoding=UTF-8 -Dosgi.requiredJavaVersion=21"
set "places=-Djava.util.logging.config.file="%here%\logging.properties" -Dstillroom.home="%here%" -Dstillroom.state="%state%" -Dstillroom.cache="%cache%" -Dstillroom.data="%data%" -Dstillroom.example="%STILLROOM_EXAMPLE%" -Dstillroom.library="%library%""
setlocal disabledelayedexpansion
if "%face%"=="workbench" (
  "%java%" %common% -XX:+UseG1GC %places% %STILLROOM_JAVA_OPTS% -jar "%launcher%" -configuration "%configuration%" -product org.stillroom.workbench.product -application org.stillroom.workbench.application -data "%state%\workbench"
) else (
  "%java%" %common% -XX:+UseSerialGC %places% %STILLROOM_JAVA_OPTS% -jar "%launcher%" -configuration "%configuration%" -application org.stillroom.cli.application -data @none %*
)
exit /b %errorlevel%

:try
if defined java exit /b 0
if "%~1"=="" exit /b 0
if not exist "%~1\bin\java.exe" exit /b 0
set "found="
for /f "usebackq tokens=1,2 delims==" %%A in ("%~1\release") do if "%%A"=="JAVA_VERSION" set "found=%%~B"
if not defined found exit /b 0
for /f "delims=.+-" %%V in ("%found%") do set "found=%%V"
if %found% geq 21 set "java=%~1\bin\java.exe"
exit /b 0
