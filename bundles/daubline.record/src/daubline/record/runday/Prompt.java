package daubline.record.runday;

/**
 * Something that is due.
 *
 * @param id stable name: charge, temperature, level, relief
 * @param due seconds since the fire was lit at which it is due
 */
public record Prompt(String id, double due) {
}
