export const keep = {
  save: 'Save a backup',
  fileName: (day: string) => `rollwright backup ${day}.zip`,
};
