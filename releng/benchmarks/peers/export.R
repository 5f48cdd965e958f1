# Writes the table of ExportTimes with R and prints the seconds that the writing took: export.R writexl|csv ROWS COLUMNS FILE
args <- commandArgs(trailingOnly = TRUE)
rows <- as.integer(args[2])
columns <- as.integer(args[3])
r <- seq_len(rows) - 1
data <- lapply(seq_len(columns) - 1, function(c) if (c %% 10 == 0) paste("trial", (r * 31 + c) %% 997) else ((r * 7919 + c * 104729) %% 1000003) / 1000)
names(data) <- paste0("c", seq_len(columns) - 1)
data <- as.data.frame(data)
if (args[1] == "writexl") library(writexl)
start <- proc.time()[["elapsed"]]
if (args[1] == "writexl") write_xlsx(data, args[4]) else write.csv(data, args[4], row.names = FALSE)
cat(proc.time()[["elapsed"]] - start, "\n")
