/** A copy of its own, since a draft's records may not lie in two places. Records are plain JSON, as backups write them. */
export const own = <Value>(value: Value): Value => JSON.parse(JSON.stringify(value));
