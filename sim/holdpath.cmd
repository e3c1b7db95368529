@echo off
rem Starts Holdpath; builds it first where the jar is missing or older than the sources.
rem Only the program itself may write to standard output: everything here goes to the error stream.
setlocal EnableExtensions DisableDelayedExpansion

set "hp_version=0.1.0"
set "hp_main=io.github.holdpath.sim.cli.Main"
for %%I in ("%~dp0..") do set "hp_root=%%~fI"
rem Pictures need libraries of their own, which must not slow the other commands.
set "hp_module=sim"
if "%~1"=="view" set "hp_module=viewer"
set "hp_target=%hp_root%\%hp_module%\target"
set "hp_sim_target=%hp_root%\sim\target"
set "hp_app=%hp_target%\app"
set "hp_jar=%hp_target%\holdpath-%hp_module%-%hp_version%.jar"
set "hp_archive=%hp_target%\holdpath.jsa"
set "hp_lock=%hp_sim_target%\launcher.lock"
set "hp_log=%hp_target%\build.log"

rem ---- Java
if defined JAVA_HOME goto java_home
set "hp_java="
for %%I in (java.exe) do set "hp_java=%%~$PATH:I"
if defined hp_java goto java_found
>&2 echo holdpath: needs Java 17 or newer and found none; install a JDK and put its java on the PATH, or set JAVA_HOME
exit /b 2
:java_home
set "hp_java=%JAVA_HOME%\bin\java.exe"
if exist "%hp_java%" goto java_found
>&2 echo holdpath: there is no bin\java.exe in the folder that JAVA_HOME names; set it to a JDK 17 or newer, or unset it
exit /b 2
:java_found
for %%I in ("%hp_java%\..\..") do set "hp_release=%%~fI\release"
set "hp_java_version="
if exist "%hp_release%" for /f "usebackq tokens=1,2 delims==" %%A in ("%hp_release%") do if "%%A"=="JAVA_VERSION" set "hp_java_version=%%~B"
if not defined hp_java_version for /f "tokens=2,3" %%A in ('^""%hp_java%" -version 2^>^&1^"') do if "%%A"=="version" set "hp_java_version=%%~B"
set "hp_major=0"
for /f "delims=.+-_ " %%A in ("%hp_java_version%") do set /a "hp_major=%%A"
if %hp_major% GEQ 17 goto check_build
>&2 echo holdpath: needs Java 17 or newer, but the java found is "%hp_java_version%"; install a JDK 17 or newer, or set JAVA_HOME to one
exit /b 2

rem ---- Build where the jar is missing or older than a source file or folder
:check_build
set "hp_reason=building, first use (about a minute) ..."
if not exist "%hp_jar%" goto build
if not exist "%hp_app%\holdpath-dynamics-%hp_version%.jar" goto build
set "hp_reason=sources changed, building ..."
powershell -NoProfile -NonInteractive -Command "$t = (Get-Item -LiteralPath $env:hp_jar).LastWriteTimeUtc; Set-Location -LiteralPath $env:hp_root; $m = @('dynamics', 'sim'); if ($env:hp_module -eq 'viewer') { $m += 'viewer' }; $p = @($m | ForEach-Object { $_ + '/src/main' }); $s = @(Get-Item -Path (@('pom.xml') + $p + @($m | ForEach-Object { $_ + '/pom.xml' }))) + @(Get-ChildItem -Recurse -Path $p); if ($s | Where-Object { $_.LastWriteTimeUtc -gt $t }) { exit 3 }" <nul >nul 2>nul
if %errorlevel% EQU 3 goto build
goto check_archive

:build
where mvn >nul 2>nul
if errorlevel 1 goto no_maven
if not exist "%hp_target%" md "%hp_target%" 2>nul
if not exist "%hp_sim_target%" md "%hp_sim_target%" 2>nul
set /a "hp_waits=0"
:lock
md "%hp_lock%" 2>nul && goto locked
if not exist "%hp_lock%" goto read_only
if %hp_waits% EQU 0 echo holdpath: waiting for another start that builds; if none is running, remove the folder "%hp_lock%" 1>&2
set /a "hp_waits+=1"
if %hp_waits% GEQ 600 exit /b 70
ping -n 2 127.0.0.1 >nul
goto lock
:locked
if %hp_waits% EQU 0 goto locked_first
rd "%hp_lock%"
goto check_build
:locked_first
>&2 echo holdpath: %hp_reason%
if exist "%hp_app%" rd /s /q "%hp_app%"
if exist "%hp_sim_target%\app" rd /s /q "%hp_sim_target%\app"
pushd "%hp_root%"
call mvn -B -ntp -Dstyle.color=never -pl %hp_module% -am package -Dmaven.test.skip=true -Dspotless.check.skip=true -Djacoco.skip=true -Dmaven.javadoc.skip=true <nul >"%hp_log%" 2>&1
set "hp_status=%errorlevel%"
popd
rd "%hp_lock%"
if not "%hp_status%"=="0" goto build_failed
if not exist "%hp_jar%" goto build_failed
goto check_archive
:build_failed
if exist "%hp_jar%" del "%hp_jar%"
powershell -NoProfile -NonInteractive -Command "Get-Content -LiteralPath $env:hp_log -Tail 20" <nul 1>&2
>&2 echo holdpath: the build failed; all of Maven's output is in "%hp_log%"
exit /b 70
:no_maven
>&2 echo holdpath: has to be built first and found no Maven; install Maven 3.8 or newer and put its mvn on the PATH
exit /b 2
:read_only
>&2 echo holdpath: has to be built first, but "%hp_target%" is not writable; copy the checkout to a folder of your own, or let its owner start it once
exit /b 2

rem ---- Class-data sharing: a training run notes the loaded classes, later starts map them.
rem The key is kept even where no archive could be made, so that it is not tried at each start.
:check_archive
for %%I in ("%hp_jar%") do set "hp_key=%hp_java% %hp_java_version% %%~tI %%~zI %hp_root%"
set "hp_found="
if exist "%hp_archive%.key" set /p "hp_found=" <"%hp_archive%.key"
if "%hp_found%"=="%hp_key%" goto start
set "hp_temp=%hp_target%\holdpath.%random%.jsa"
pushd "%hp_root%"
"%hp_java%" "-XX:ArchiveClassesAtExit=%hp_temp%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -cp "%hp_jar%;%hp_app%\*" %hp_main% check scenes/cartons.json --json - <nul >nul 2>nul
popd
if exist "%hp_archive%" del /f "%hp_archive%" 2>nul
if exist "%hp_temp%" move /y "%hp_temp%" "%hp_archive%" >nul 2>nul
<nul set /p "=%hp_key%" 2>nul >"%hp_archive%.key"

rem ---- Start; short commands end before the second compiler pays
:start
set "hp_compiler=-XX:+TieredCompilation"
if "%~1"=="" set "hp_compiler=-XX:TieredStopAtLevel=1"
for %%C in (check explain new help --help --version -h -V) do if "%~1"=="%%C" set "hp_compiler=-XX:TieredStopAtLevel=1"
set "hp_share="
if exist "%hp_archive%" set hp_share="-XX:SharedArchiveFile=%hp_archive%" -Xshare:auto
rem Java writes warnings about a shared archive to standard output unless told otherwise.
"%hp_java%" -Xlog:disable -Xlog:all=error:stderr %hp_compiler% -XX:+UseSerialGC %hp_share% -cp "%hp_jar%;%hp_app%\*" %hp_main% %*
exit /b %errorlevel%
