@echo off
rem The command line. Needs a Java 21 or newer on PATH.
for %%J in ("%~dp0plugins\org.eclipse.equinox.launcher_*.jar") do java -Xmx2g -jar "%%J" -install "%~dp0." -nosplash -data @none -application org.roofspring.cli.application %*
