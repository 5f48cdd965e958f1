# What another program reads: Rscript read.R workbook FILE, Rscript read.R deposit FOLDER PLAN
# Prints one line a value as read.py does. PLAN tells for each column of the deposit: table, column, type, signs of missing.
arguments <- commandArgs(trailingOnly = TRUE)
hex <- function(text) paste(format(charToRaw(enc2utf8(text))), collapse = "")
put <- function(table, row, column, value) {
  number <- is.numeric(value)
  cat(hex(table), row, column, if (number) "n" else "s", if (number) sprintf("%.17g", value) else hex(as.character(value)), sep = "\t")
  cat("\n")
}
if (arguments[1] == "workbook") {
  for (sheet in readxl::excel_sheets(arguments[2])) {
    cells <- readxl::read_excel(arguments[2], sheet, col_names = FALSE, col_types = "list", trim_ws = FALSE, na = character(), .name_repair = "minimal")
    for (column in seq_along(cells)) for (row in seq_along(cells[[column]])) {
      value <- cells[[column]][[row]]
      if (!is.null(value) && !is.na(value)) put(sheet, row - 1, column - 1, value)
    }
  }
} else {
  plan <- read.delim(arguments[3], header = FALSE, colClasses = "character", quote = "", na.strings = character())
  for (table in unique(plan[[1]])) {
    fields <- plan[plan[[1]] == table, ]
    cells <- read.csv(file.path(arguments[2], "data", paste0(table, ".csv")), colClasses = "character", na.strings = character(), check.names = FALSE,
      encoding = "UTF-8")
    for (column in seq_len(nrow(fields))) {
      missing <- strsplit(fields[column, 4], " ")[[1]]
      for (row in seq_len(nrow(cells))) {
        text <- cells[row, column]
        if (!(text %in% missing) && text != "") put(table, row - 1, column - 1, if (fields[column, 3] %in% c("number", "integer")) as.numeric(text) else text)
      }
    }
  }
}
