@echo off
rem Opens the workbench. Needs a Java 21 or newer on PATH.
for %%J in ("%~dp0plugins\org.eclipse.equinox.launcher_*.jar") do java -Xmx2g --enable-native-access=ALL-UNNAMED -jar "%%J" -install "%~dp0." -name Roofspring -data "%USERPROFILE%\.roofspring\workspace" %*
