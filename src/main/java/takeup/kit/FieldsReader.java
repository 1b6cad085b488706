package takeup.kit;

/** Makes a profile of one sort of its fields. */
interface FieldsReader<T> {
    /** The profile of that key; with a {@link takeup.json.JsonProblem} where a field is wrong. */
    T read(String key, ProfileFields fields);
}
