# SPDX-License-Identifier: GPL-3.0-or-later
"""Lets LibreOffice recalculate workbooks of ours and compares each formula cell with the value that
was stored beside it: 1e-9 relative, or 1e-7 absolute where the value is a difference near zero.

A fresh profile forces recalculation; without it LibreOffice keeps stored values, so the script first
proves that it recalculates at all by a workbook with a wrong stored value.

Usage: recalculate.py DIRECTORY FILE.xlsx...
Exit status: 0 all agree; 1 a cell differs; 77 no LibreOffice on this machine.
"""
import csv
import pathlib
import re
import shutil
import subprocess
import sys
import xml.etree.ElementTree as ET
import zipfile

NS = {"m": "http://schemas.openxmlformats.org/spreadsheetml/2006/main"}
REL = "{http://schemas.openxmlformats.org/officeDocument/2006/relationships}id"
PROFILE = """<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema"
 xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode"
 oor:op="fuse"><value>0</value></prop></item>
</oor:items>
"""


def formula_cells(path):
    """{sheet name: {(row, column): (formula, stored value)}} with rows and columns from 0."""
    out = {}
    with zipfile.ZipFile(path) as z:
        book = ET.fromstring(z.read("xl/workbook.xml"))
        rels = ET.fromstring(z.read("xl/_rels/workbook.xml.rels"))
        target = {r.get("Id"): r.get("Target") for r in rels}
        for sheet in book.find("m:sheets", NS):
            root = ET.fromstring(z.read("xl/" + target[sheet.get(REL)]))
            cells = {}
            for c in root.iter("{%s}c" % NS["m"]):
                f = c.find("m:f", NS)
                if f is None:
                    continue
                letters, digits = re.match(r"([A-Z]+)(\d+)", c.get("r")).groups()
                column = 0
                for letter in letters:
                    column = column * 26 + ord(letter) - 64
                cells[int(digits) - 1, column - 1] = (f.text, float(c.find("m:v", NS).text))
            out[sheet.get("name")] = cells
    return out


def recalculated(path, work):
    """{sheet name: rows of texts} as LibreOffice computes them, in full precision."""
    profile = work / "profile"
    (profile / "user").mkdir(parents=True, exist_ok=True)
    (profile / "user" / "registrymodifications.xcu").write_text(PROFILE)
    out = work / "csv" / path.stem
    shutil.rmtree(out, ignore_errors=True)
    # Token 7 true would keep number formats and round; false writes the values themselves.
    subprocess.run(
        ["soffice", f"-env:UserInstallation=file://{profile.resolve()}", "--headless",
         "--convert-to",
         "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false,false,false,false,-1",
         "--outdir", str(out), str(path)],
        check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, timeout=300)
    sheets = {}
    for file in out.glob("*.csv"):
        with open(file, newline="", encoding="utf-8") as f:
            sheets[file.stem[len(path.stem) + 1:]] = list(csv.reader(f))
    return sheets


def compare(path, work):
    expected = formula_cells(path)
    got = recalculated(path, work)
    count, bad = 0, []
    for sheet, cells in expected.items():
        for (row, column), (formula, value) in cells.items():
            count += 1
            try:
                text = got[sheet][row][column]
                ours = float(text[:-1]) / 100 if text.endswith("%") else float(text)
            except (KeyError, IndexError, ValueError) as e:
                bad.append(f"{path.name}, {sheet}, row {row + 1}, column {column + 1}: "
                           f"{formula} stored {value!r}, recalculated {e!r}")
                continue
            if abs(ours - value) > max(1e-9 * abs(value), 1e-7):
                bad.append(f"{path.name}, {sheet}, row {row + 1}, column {column + 1}: "
                           f"{formula} stored {value!r}, recalculated {ours!r}")
    return count, bad


def spoil(path, out):
    """A copy in which the first stored value of a formula cell is 999."""
    with zipfile.ZipFile(path) as a, zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as b:
        done = False
        for name in a.namelist():
            data = a.read(name)
            if not done and name.startswith("xl/worksheets/sheet"):
                data, n = re.subn(rb"(</f><v>)[^<]*(</v>)", rb"\g<1>999123\g<2>", data, count=1)
                done = n > 0
            b.writestr(name, data)
    assert done, "no formula to spoil"


def main():
    work = pathlib.Path(sys.argv[1])
    files = [pathlib.Path(f) for f in sys.argv[2:]]
    if shutil.which("soffice") is None:
        print("LibreOffice is not installed: nothing was recalculated")
        return 77
    wrong = work / "spoiled.xlsx"
    spoil(files[0], wrong)
    if len(compare(wrong, work)[1]) != 1:
        print("LibreOffice did not recalculate: a wrong stored value went unnoticed")
        return 1
    status = 0
    for path in files:
        count, bad = compare(path, work)
        print(f"{path.name}: {count} formula cells, {len(bad)} differ")
        for line in bad[:20]:
            print("  " + line)
        if bad or count == 0:
            status = 1
    return status


if __name__ == "__main__":
    sys.exit(main())
