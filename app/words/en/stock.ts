/** The Stock room. */
export const stock = {
  title: 'Stock',
};
