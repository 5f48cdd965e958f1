"""What other programs read: read.py workbook FILE, read.py deposit FOLDER, read.py schema SCHEMA FILE.

Prints one line a value: table, row, column, kind (n or s), and the number or the text's UTF-8 bytes in hexadecimal.
"""
import csv
import json
import sys


def put(table, row, column, value):
    kind = "n" if isinstance(value, (int, float)) and not isinstance(value, bool) else "s"
    text = repr(float(value)) if kind == "n" else str(value).encode("utf-8").hex()
    print(table.encode("utf-8").hex(), row, column, kind, text, sep="\t")


def workbook(file):
    import openpyxl
    book = openpyxl.load_workbook(file)
    for sheet in book.worksheets:
        for row in sheet.iter_rows():
            for cell in row:
                if cell.value is not None:
                    if cell.data_type == "f":
                        raise SystemExit("a formula stands in %s %s" % (sheet.title, cell.coordinate))
                    put(sheet.title, cell.row - 1, cell.column - 1, cell.value)


def deposit(folder):
    package = json.load(open(folder + "/datapackage.json", encoding="utf-8"))
    for resource in package["resources"]:
        if resource.get("type") != "table" or not resource["path"].startswith("data/"):
            continue
        schema = resource["schema"]
        usual = {m["value"] for m in schema["missingValues"]}
        with open(folder + "/" + resource["path"], encoding="utf-8", newline="") as lines:
            for number, row in enumerate(csv.DictReader(lines)):
                for column, field in enumerate(schema["fields"]):
                    text = row[field["name"]]
                    missing = {m["value"] for m in field["missingValues"]} if "missingValues" in field else usual
                    if text not in missing:
                        put(resource["name"], number, column, float(text) if field["type"] in ("number", "integer") else text)


def schema(rules, file):
    import jsonschema
    errors = list(jsonschema.Draft7Validator(json.load(open(rules, encoding="utf-8"))).iter_errors(json.load(open(file, encoding="utf-8"))))
    for error in errors:
        print("/".join(map(str, error.path)), error.message[:300])


{"workbook": workbook, "deposit": deposit, "schema": schema}[sys.argv[1]](*sys.argv[2:])
