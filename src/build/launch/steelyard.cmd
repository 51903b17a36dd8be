@echo off
rem Starts Steelyard quickly: with the class-data archive that the build made beside the jar.
setlocal
set java=java
if defined JAVA_HOME set java="%JAVA_HOME%\bin\java"
set quick=-XX:TieredStopAtLevel=1 -XX:+UseSerialGC
if "%1"=="audit" set quick=
%java% -Xshare:auto -XX:SharedArchiveFile="%~dp0steelyard.jsa" -Xlog:disable -Xlog:all=error:stderr %quick% -jar "%~dp0steelyard.jar" %*
