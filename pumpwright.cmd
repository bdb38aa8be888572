@echo off
rem Runs Pumpwright on Windows; builds it first when there is no build.
setlocal
set "home=%~dp0"
if not exist "%home%host\target\pumpwright.jar" (
    echo pumpwright: building ... 1>&2
    pushd "%home%"
    call mvn -q -B -pl host -am "-Dmaven.test.skip=true" "-Dspotless.check.skip=true" package 1>&2 || exit /b 3
    popd
)
java -XX:+UseSerialGC -cp "%home%host\target\pumpwright.jar;%home%host\target\lib\*" "-Dpumpwright.home=%home%." org.pumpwright.host.cli.Main %*
