# python3 xlsxwriter_file.py flights.csv folder
import csv, datetime, sys
import xlsxwriter

rows = list(csv.reader(open(sys.argv[1], encoding="utf-8")))
head, flights = rows[0], rows[1:]

# xlsxwriter.xlsx: inline texts, days from 1904, rows hidden by a filter, one formula given without a result
wb = xlsxwriter.Workbook(sys.argv[2] + "/xlsxwriter.xlsx", {"constant_memory": True, "date_1904": True})
wb.set_properties({"created": datetime.datetime(2024, 6, 1)})
ws = wb.add_worksheet("Season")
day = wb.add_format({"num_format": "d mmm yyyy"})
for j, h in enumerate(head):
    ws.write_string(0, j, h)
ws.autofilter(0, 0, len(flights) + 1, len(head) - 1)
for i, f in enumerate(flights + [["PH"] + flights[0][1:]]):
    if i in (2, 3):
        ws.set_row(i + 1, None, None, {"hidden": True})
    for j, x in enumerate(f):
        if head[j] == "Date":
            ws.write_datetime(i + 1, j, datetime.datetime.fromisoformat(x), day)
        elif head[j] == "Trip" and f[0] == "PH":
            ws.write_formula(i + 1, j, "=1000+500")
        elif head[j] == "Trip":
            ws.write_formula(i + 1, j, "=" + x, None, float(x))
        else:
            try:
                ws.write_number(i + 1, j, float(x))
            except ValueError:
                ws.write_string(i + 1, j, x)
wb.close()
