@echo off
rem Builds the program when it is missing, then runs it. After a change of the source delete artifacts\cli.
setlocal
set HERE=%~dp0
if not exist "%HERE%artifacts\cli\.built" (
  echo building tangwright, once ... 1>&2
  pushd "%HERE%"
  dotnet publish src\Cli\Cli.csproj -c Release -p:PublishReadyToRun=false -o artifacts\cli --nologo -v q 1>&2 || exit /b 3
  popd
  echo built > "%HERE%artifacts\cli\.built"
)
"%HERE%artifacts\cli\tangwright.exe" %*
