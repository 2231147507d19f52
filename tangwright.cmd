@echo off
rem Builds the program when it is missing, then runs it; "desk" is a program of its own. After a change of the source delete the folder in artifacts.
setlocal
set HERE=%~dp0
set PART=cli
set PROJECT=src\Cli\Cli.csproj
set PROGRAM=tangwright.exe
set ARGS=%*
if /i "%~1"=="desk" (
  set PART=desk
  set PROJECT=src\Desk\Desk.csproj
  set PROGRAM=tangwright-desk.exe
  call set ARGS=%%ARGS:*desk=%%
)
if not exist "%HERE%artifacts\%PART%\.built" (
  echo building tangwright, once ... 1>&2
  pushd "%HERE%"
  dotnet publish %PROJECT% -c Release -p:PublishReadyToRun=false -o artifacts\%PART% --nologo -v q 1>&2 || exit /b 3
  popd
  echo built > "%HERE%artifacts\%PART%\.built"
)
"%HERE%artifacts\%PART%\%PROGRAM%" %ARGS%
