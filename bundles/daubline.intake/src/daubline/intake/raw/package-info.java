/** The cells of a CSV file or a workbook as they stand, with what had to be found out to read them. Knows no study. */
package daubline.intake.raw;
