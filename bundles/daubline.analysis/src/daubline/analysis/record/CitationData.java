package daubline.analysis.record;

/** A publication; empty text where a part is not stated. */
public record CitationData(String id, String authors, String year, String title, String container, String volume, String pages, String publisher,
    String doi, String url, String editors, String issue, String place, String isbn, String kind, String note) {
}
