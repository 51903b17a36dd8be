#!/bin/sh
# Writes the workbooks anew from flights.csv: make.sh FOLDER; PYTHON names the one with uno, openpyxl and xlsxwriter
set -e
here=$(dirname "$0"); in=$here/../flights.csv; out=${1:?folder}; python=${PYTHON:-python3}
profile=-env:UserInstallation=file://$(mktemp -d)
mkdir -p "$out"
soffice $profile --headless --convert-to xlsx --outdir "$out" "$in" && mv "$out/flights.xlsx" "$out/calc-plain.xlsx"
soffice $profile --headless --norestore --accept="socket,host=localhost,port=2002;urp;" & office=$!
sleep 12
$python "$here/calc.py" "$in" "$out"
kill $office; wait $office || true
ssconvert --export-type=Gnumeric_Excel:xlsx2 "$in" "$out/gnumeric.xlsx"
$python "$here/openpyxl_files.py" "$in" "$out"
$python "$here/xlsxwriter_file.py" "$in" "$out"
perl "$here/excel_writer.pl" "$in" "$out"
soffice $profile --headless --convert-to xlsx:"Calc MS Excel 2007 XML" --outdir "$out/calc" "$out/openpyxl-formulas.xlsx"
mv "$out/calc/openpyxl-formulas.xlsx" "$out/calc-calculated.xlsx"; rmdir "$out/calc"
