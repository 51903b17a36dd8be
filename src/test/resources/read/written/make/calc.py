# Writes workbooks with a running LibreOffice Calc (see make.sh): python3 calc.py flights.csv folder
import csv, os, sys, uno
from com.sun.star.beans import PropertyValue
from com.sun.star.util import Date

rows = list(csv.reader(open(sys.argv[1], encoding="utf-8")))
head, flights = rows[0], rows[1:]
out = sys.argv[2]
local = uno.getComponentContext()
resolver = local.ServiceManager.createInstanceWithContext("com.sun.star.bridge.UnoUrlResolver", local)
ctx = resolver.resolve("uno:socket,host=localhost,port=2002;urp;StarOffice.ComponentContext")
desktop = ctx.ServiceManager.createInstanceWithContext("com.sun.star.frame.Desktop", ctx)


def prop(name, value):
    p = PropertyValue()
    p.Name, p.Value = name, value
    return p


def new():
    return desktop.loadComponentFromURL("private:factory/scalc", "_blank", 0, (prop("Hidden", True),))


def date_format(doc):
    known = doc.NumberFormats.queryKey("DD.MM.YY", doc.CharLocale, False)
    return known if known >= 0 else doc.NumberFormats.addNew("DD.MM.YY", doc.CharLocale)


def put(doc, sheet, row, col, text, as_text=False):
    cell = sheet.getCellByPosition(col, row)
    if text == "":
        return
    if head[col] == "Date":
        cell.Formula = text
        cell.NumberFormat = date_format(doc)
        return
    try:
        if as_text:
            raise ValueError
        cell.Value = float(text)
    except ValueError:
        cell.String = text


def save(doc, name):
    doc.calculateAll()
    doc.storeToURL("file://" + os.path.abspath(os.path.join(out, name)), (prop("FilterName", "Calc MS Excel 2007 XML"),))
    doc.close(True)


def merge(sheet, c0, r0, c1, r1):
    sheet.getCellRangeByPosition(c0, r0, c1, r1).merge(True)


# calc-messy.xlsx: titles, blank rows, numbers as text, formulas, totals, hidden rows and columns, 50 extra columns
doc = new()
sheet = doc.Sheets.getByIndex(0)
sheet.Name = "May"
sheet.getCellByPosition(0, 0).String = "Loadings of the season"
merge(sheet, 0, 0, 9, 0)
sheet.getCellByPosition(0, 1).String = "as sent by the crews"
for j, h in enumerate(head):
    sheet.getCellByPosition(j, 3).String = h
for k in range(50):
    sheet.getCellByPosition(len(head) + k, 3).String = "Note %d" % (k + 1)
r = 4
for i, f in enumerate(flights):
    if i in (2, 5):
        r += 1  # a blank row
    if i == 4:
        sheet.getCellByPosition(0, r).String = "From the islands"
        merge(sheet, 0, r, 9, r)
        r += 1
    for j, x in enumerate(f):
        put(doc, sheet, r, j, x, as_text=(head[j] == "Pax A" or head[j] == "Pilot"))
    if i % 2 == 0:  # the right tank by formula
        sheet.getCellByPosition(head.index("Right"), r).Formula = "=K%d" % (r + 1)
    sheet.getCellByPosition(len(head) + 3, r).String = "seen"
    if i in (1, 6):
        sheet.Rows.getByIndex(r).IsVisible = False
    r += 1
f = list(flights[0])
f[0] = "ERR"
for j, x in enumerate(f):
    put(doc, sheet, r, j, x)
sheet.getCellByPosition(head.index("Left"), r).Formula = "=1/0"
r += 2
sheet.getCellByPosition(0, r).String = "Total"
for h in ("Pax A", "Pax B", "Hold 1", "Hold 2", "Right", "Taxi", "Trip"):
    c = head.index(h)
    letter = chr(65 + c)
    sheet.getCellByPosition(c, r).Formula = "=SUM(%s5:%s%d)" % (letter, letter, r - 1)
sheet.Columns.getByIndex(head.index("Hold 2")).IsVisible = False
doc.Sheets.insertNewByName("Notes", 1)
doc.Sheets.getByName("Notes").getCellByPosition(0, 0).String = "Ask Cy about T06"
doc.Sheets.insertNewByName("Old", 2)
old = doc.Sheets.getByName("Old")
for j, h in enumerate(head):
    old.getCellByPosition(j, 0).String = h
for j, x in enumerate(flights[0]):
    put(doc, old, 1, j, x)
old.IsVisible = False
save(doc, "calc-messy.xlsx")

# calc-merged.xlsx: one cell for the tail and the date of the flights that share them; sums without a word below
doc = new()
sheet = doc.Sheets.getByIndex(0)
sheet.Name = "Merged"
for j, h in enumerate(head):
    sheet.getCellByPosition(j, 0).String = h
for i, f in enumerate(flights):
    for j, x in enumerate(f):
        same = i > 0 and flights[i - 1][1:3] == f[1:3] and head[j] in ("Date", "Tail")
        put(doc, sheet, i + 1, j, "" if same else x)
for j in (1, 2):
    for first, last in ((1, 2), (3, 4), (5, 6)):
        merge(sheet, j, first, j, last)
for h in ("Pax A", "Pax B", "Hold 1", "Trip"):
    c = head.index(h)
    sheet.getCellByPosition(c, len(flights) + 2).Formula = "=SUM(%s2:%s%d)" % (
        chr(65 + c), chr(65 + c), len(flights) + 1)
save(doc, "calc-merged.xlsx")

# calc-1904.xlsx: days counted from 1 January 1904
doc = new()
start = Date()
start.Day, start.Month, start.Year = 1, 1, 1904
doc.NullDate = start
sheet = doc.Sheets.getByIndex(0)
for j, h in enumerate(head):
    sheet.getCellByPosition(j, 0).String = h
for i, f in enumerate(flights):
    for j, x in enumerate(f):
        put(doc, sheet, i + 1, j, x)
save(doc, "calc-1904.xlsx")
