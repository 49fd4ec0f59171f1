@echo off
rem SPDX-License-Identifier: EPL-2.0
rem Starts the workbench of this product.
rem   loomwright-workbench [--demo] [-data FOLDER]
rem   JAVA_HOME               the Java to use (17 or newer); else the java on the PATH
rem   LOOMWRIGHT_WORKSPACE    folder of the workspace when no -data is given, else "Loomwright" in the home folder
rem   LOOMWRIGHT_JAVA_OPTS    more options for the virtual machine
setlocal DisableDelayedExpansion
set "LW_HOME=%~dp0.."
set "LW_JAVA=java"
if defined JAVA_HOME set "LW_JAVA=%JAVA_HOME%\bin\java"
set "LW_VERSION="
for /f "tokens=3" %%v in ('""%LW_JAVA%" -version 2>&1" ^| findstr /i /c:" version "') do if not defined LW_VERSION set "LW_VERSION=%%~v"
if not defined LW_VERSION (
    echo loomwright-workbench: Java 17 or newer is needed; install one and put it on the PATH or set JAVA_HOME 1>&2
    exit /b 3
)
for /f "delims=.-+" %%m in ("%LW_VERSION%") do set "LW_MAJOR=%%m"
if %LW_MAJOR% LSS 17 (
    echo loomwright-workbench: Java 17 or newer is needed; %LW_JAVA% is Java %LW_VERSION% 1>&2
    exit /b 3
)
if not defined LOOMWRIGHT_WORKSPACE set "LOOMWRIGHT_WORKSPACE=%USERPROFILE%\Loomwright"
set "LW_DATA=-data "%LOOMWRIGHT_WORKSPACE%""
echo %* | findstr /c:"-data" >nul && set "LW_DATA="
for %%f in ("%LW_HOME%\plugins\org.eclipse.equinox.launcher_*.jar") do set "LW_LAUNCHER=%%f"
"%LW_JAVA%" -Xms160m -Xmn64m -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -XX:-UsePerfData -Djava.awt.headless=true %LOOMWRIGHT_JAVA_OPTS% -jar "%LW_LAUNCHER%" -nosplash %LW_DATA% %*
exit /b %ERRORLEVEL%
