#!/bin/sh
# Writes the workbooks anew from flights.csv: make.sh FOLDER
set -e
here=$(dirname "$0"); in=$here/../flights.csv; out=${1:?folder}; profile=-env:UserInstallation=file:///tmp/lo-written
mkdir -p "$out"
soffice $profile --headless --convert-to xlsx --outdir "$out" "$in" && mv "$out/flights.xlsx" "$out/calc-plain.xlsx"
soffice $profile --headless --norestore --accept="socket,host=localhost,port=2002;urp;" & office=$!
sleep 12
/usr/bin/python3 "$here/calc.py" "$in" "$out"
kill $office; wait $office || true
ssconvert --export-type=Gnumeric_Excel:xlsx2 "$in" "$out/gnumeric.xlsx"
/usr/bin/python3 "$here/openpyxl_files.py" "$in" "$out"
/usr/bin/python3 "$here/xlsxwriter_file.py" "$in" "$out"
perl "$here/excel_writer.pl" "$in" "$out"
soffice $profile --headless --convert-to xlsx:"Calc MS Excel 2007 XML" --outdir "$out/calc" "$out/openpyxl-formulas.xlsx"
mv "$out/calc/openpyxl-formulas.xlsx" "$out/calc-calculated.xlsx"; rmdir "$out/calc"
