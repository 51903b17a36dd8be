# python3 openpyxl_files.py flights.csv folder
import csv, datetime, sys
import openpyxl

rows = list(csv.reader(open(sys.argv[1], encoding="utf-8")))
head, flights = rows[0], rows[1:]


def value(h, x):
    if x == "":
        return None
    if h == "Date":
        return datetime.date.fromisoformat(x)
    try:
        return float(x) if "." in x else int(x)
    except ValueError:
        return x


# openpyxl-two-rows.xlsx: headings over two rows, merged across and down; the flights on two sheets
wb = openpyxl.Workbook()
wb.remove(wb.active)
group = {"Pax A": ("Passengers", "A"), "Pax B": ("Passengers", "B"), "Hold 1": ("Holds", "1"), "Hold 2": ("Holds", "2"),
         "Left": ("Fuel", "left"), "Right": ("Fuel", "right"), "Taxi": ("Fuel", "taxi"), "Trip": ("Fuel", "trip")}
for name, part in (("Early", flights[:4]), ("Late", flights[4:])):
    ws = wb.create_sheet(name)
    ws["A1"] = "Loadings, " + name.lower()
    ws.merge_cells("A1:O1")
    for j, h in enumerate(head):
        upper, lower = group.get(h, (h, None))
        if lower is None:
            ws.cell(3, j + 1, upper)
            ws.merge_cells(start_row=3, end_row=4, start_column=j + 1, end_column=j + 1)
        else:
            if upper not in [c.value for c in ws[3]]:
                ws.cell(3, j + 1, upper)
            ws.cell(4, j + 1, lower)
    ws.merge_cells("G3:H3")
    ws.merge_cells("I3:J3")
    ws.merge_cells("K3:N3")
    for i, f in enumerate(part):
        for j, x in enumerate(f):
            ws.cell(i + 5, j + 1, value(head[j], x))
wb.save(sys.argv[2] + "/openpyxl-two-rows.xlsx")

# openpyxl-formulas.xlsx: the trip fuel of every flight by a formula that nobody has calculated
wb = openpyxl.Workbook()
ws = wb.active
ws.title = "Formulas"
ws.append(head)
for i, f in enumerate(flights):
    ws.append([value(h, x) for h, x in zip(head, f)])
    ws.cell(i + 2, head.index("Trip") + 1, "=%s+0" % f[head.index("Trip")])
wb.save(sys.argv[2] + "/openpyxl-formulas.xlsx")
