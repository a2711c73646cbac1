@echo off
rem The command line. Needs a Java 21 or newer on PATH.
for %%J in ("%~dp0plugins\org.eclipse.equinox.launcher_*.jar") do java -Xmx2g -Djava.util.logging.config.file="%~dp0logging.properties" -jar "%%J" -install "%~dp0." -nosplash -data @none -application org.roofspring.cli.application %*
