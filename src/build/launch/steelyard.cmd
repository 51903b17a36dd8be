@echo off
rem Starts Steelyard quickly: with the class-data archive that the build made beside the jar.
setlocal
set java=java
if defined JAVA_HOME set java="%JAVA_HOME%\bin\java"
set settings=-XX:TieredStopAtLevel=1 -XX:+UseSerialGC
set /a young=150*NUMBER_OF_PROCESSORS
if "%1"=="audit" set settings=-XX:+UseParallelGC -XX:MaxNewSize=%young%m
%java% -Xshare:auto -XX:SharedArchiveFile="%~dp0steelyard.jsa" -Xlog:disable -Xlog:all=error:stderr -XX:-UsePerfData %settings% -jar "%~dp0steelyard.jar" %*
