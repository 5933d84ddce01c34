import { isNoStep, isObject, type Migration } from './stored';

/** What the words of a place meant when this was written, frozen with it. */
function placeAsOf18(place: unknown): string {
  const name = String(place);
  if (/sleeve|neck|tag|label|hood|cap|hat|manga|cuello|etiqueta|capucha|gorr/i.test(name)) return 'off-body';
  if (/back|espalda/i.test(name)) return 'back';
  if (/chest|pecho|pocket|bolsillo/i.test(name)) {
    if (/left|izq/i.test(name)) return 'left-chest';
    return /right|der/i.test(name) ? 'right-chest' : 'chest';
  }
  return /front|frente|delanter/i.test(name) ? 'front' : 'other';
}

/** From version 18 on a placement says where on the garment it is, beside the shop's own word for it. Undo begins anew. */
export const placeOnGarments: Migration = (records) => {
  const known = (placement: unknown) =>
    isObject(placement) ? { on: placeAsOf18(placement.place), ...placement } : placement;
  const embedded = (snapshot: unknown) =>
    isObject(snapshot) && Array.isArray(snapshot.placements)
      ? { ...snapshot, placements: snapshot.placements.map(known) }
      : snapshot;
  return new Map(
    [...records].filter(isNoStep).map(([key, value]) => {
      if (!isObject(value)) return [key, value];
      if (key.startsWith('placement/')) return [key, known(value)];
      if (!key.startsWith('run/')) return [key, value];
      const { printed } = value;
      return [
        key,
        {
          ...value,
          ...('snapshot' in value ? { snapshot: embedded(value.snapshot) } : {}),
          printed:
            isObject(printed) && Array.isArray(printed.as)
              ? { ...printed, as: printed.as.map(embedded) }
              : printed,
        },
      ];
    }),
  );
};
