/** As many rows, cards or lines as this are all in the page. */
export const FEW = 60;
