package daubline.analysis.record;

/**
 * Somebody who took part.
 *
 * @param id id
 * @param name name; print it only when it may be published
 * @param role role
 * @param smeltsBefore smelts done before, negative when not stated
 * @param mayPublishName whether the name may be published
 * @param trials names of the trials they took part in, comma-separated
 */
public record PersonData(String id, String name, String role, int smeltsBefore, boolean mayPublishName, String trials) {
}
