@echo off
rem Runs Filial from its sources' folder on Windows. Builds it if it was never built or the sources
rem have changed since, then starts it with an archive of classes made once for this Java.
setlocal EnableExtensions DisableDelayedExpansion

set "here=%~dp0"
set "here=%here:~0,-1%"
for %%I in ("%here%\..") do set "root=%%~fI"
set "jar=%here%\target\filial.jar"

rem --- Java ---------------------------------------------------------------------------------------
set "java=java.exe"
if not defined JAVA_HOME goto on_path
set "java=%JAVA_HOME%\bin\java.exe"
if exist "%java%" goto java_found
echo filial: JAVA_HOME is %JAVA_HOME%, but there is no bin\java.exe in it. Correct or unset it.>&2
exit /b 3
:on_path
for %%I in (java.exe) do set "java=%%~$PATH:I"
if defined java goto java_found
echo filial: there is no java here. Install a JDK, version 17 or newer, or set JAVA_HOME to one.>&2
exit /b 3
:java_found
for %%I in ("%java%") do set "java=%%~fI"
for %%I in ("%java%") do set "home=%%~dpI.."

rem The JDK's release file tells its version, where java.exe is no stub that finds the real one.
set "version="
set "major=17"
if not exist "%home%\release" goto version_read
for /f "usebackq tokens=1,2 delims==" %%A in ("%home%\release") do if "%%A"=="JAVA_VERSION" set "version=%%~B"
for /f "delims=.-+" %%A in ("%version%") do set "major=%%A"
if %major% GEQ 17 goto version_read
echo filial: this is Java %version% ("%java%"); Filial needs version 17 or newer.>&2
exit /b 3
:version_read
rem From Java 24 on, loading a native library (SQLite's) without being asked to is warned of.
set "native="
if %major% GEQ 22 set "native=--enable-native-access=ALL-UNNAMED"
rem The tables that the SQLite driver loads for dates: those of Java's older set load faster.
set "locale=-Duser.language=en -Duser.country="
if %major% LEQ 20 set "locale=%locale% -Djava.locale.providers=COMPAT"
rem Verbs that work through everything at once gain from the optimising compiler.
set "jit=-XX:TieredStopAtLevel=1 -XX:CICompilerCount=1"
set "gc=-XX:+UseG1GC -XX:ParallelGCThreads=1 -XX:ConcGCThreads=1"
set "bulk="
for %%V in (table batch export) do if "%~1"=="%%V" set "bulk=yes"
if not defined bulk goto kind_chosen
set "jit=-XX:InlineSmallCode=1200 -XX:FreqInlineSize=150"
set "gc=-XX:+UseParallelGC -XX:NewRatio=1"
:kind_chosen

if exist "%jar%" goto built
call :build
if errorlevel 1 exit /b 3
:built

rem --- run ------------------------------------------------------------------------------------------
rem The program compares the times of the sources with its own, which this shell cannot do, and ends
rem with status 75 if it has to be built anew. The variable keeps a second build from being tried.
set "sources=-Dfilial.sources=%root%"
:run
set "store="
if defined LOCALAPPDATA call :prepare
"%java%" %shared% %jit% %locale% -XX:+IgnoreUnrecognizedVMOptions ^
 -XX:+UnlockDiagnosticVMOptions -XX:ArchiveRelocationMode=0 %gc% ^
 -XX:-UsePerfData -Xlog:disable -Xlog:all=error:stderr %native% -Djdk.console=java.base -Djava.awt.headless=true ^
 -Dslf4j.provider=org.slf4j.nop.NOPServiceProvider -Dslf4j.internal.verbosity=WARN ^
 "%sources%" -cp "%jar%" dev.filial.cli.Filial %*
set "status=%errorlevel%"
if not "%status%"=="75" exit /b %status%
if "%sources%"=="-Dfilial.built=yes" exit /b 3
call :build
if errorlevel 1 exit /b 3
set "sources=-Dfilial.built=yes"
goto run

:build
where mvn >nul 2>&1
if errorlevel 1 (
  echo filial: it has to be built first, and there is no mvn here. Install Maven 3.8.1 or newer.>&2
  exit /b 1
)
echo filial: building once, because there is no program yet or its sources have changed ...>&2
pushd "%root%"
call mvn -B -ntp -q -Dmaven.test.skip=true -Dspotless.check.skip=true -Djacoco.skip=true -pl cli -am package >&2
if errorlevel 1 (
  popd
  echo filial: the build failed; the reason stands above.>&2
  exit /b 1
)
popd
exit /b 0

rem --- an archive of classes for this Java and this program ---------------------------------------
rem Its name has the program's time and size and the Java's version in it, so that another program or
rem another Java has another archive.
:prepare
set "shared="
for %%I in ("%jar%") do set "made=%%~tI-%%~zI"
set "made=%made:/=%"
set "made=%made:\=%"
set "made=%made::=%"
set "made=%made:.=%"
set "made=%made: =%"
set "place=%java%"
set "place=%place:\=-%"
set "place=%place::=%"
set "place=%place: =_%"
set "store=%LOCALAPPDATA%\filial\start-%made%\%place%-%version%"
if exist "%store%\made" goto prepared
set "passing=%store%\making-%RANDOM%"
mkdir "%passing%" 2>nul
if not exist "%passing%" exit /b 0
echo filial: preparing once for a fast start ...>&2
pushd "%passing%"
"%java%" -Xshare:off -XX:DumpLoadedClassList=classes %locale% -cp "%jar%" dev.filial.cli.Rehearsal >nul 2>&1 <nul ^
 && "%java%" -Xshare:dump -XX:+UseG1GC -XX:SharedClassListFile=classes -XX:SharedArchiveFile=archive -cp "%jar%" >nul 2>&1 <nul
popd
move /y "%passing%\archive" "%store%\archive" >nul 2>&1
move /y "%passing%\sqlitejdbc.dll" "%store%\sqlitejdbc.dll" >nul 2>&1
echo %jar%>"%store%\made"
rmdir /s /q "%passing%" 2>nul
:prepared
set shared=-XX:SharedArchiveFile="%store%\archive" -Xshare:auto -Dorg.sqlite.lib.path="%store%"
exit /b 0
