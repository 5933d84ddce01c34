import type { Limits } from '../../src/artwork';
import { fromMm } from '../../src/units';
import { fieldsIn, formTable } from '../parts/fields/form';
import { fineLength } from '../parts/fields/lengths';
import { placesIn } from '../parts/fields/place';

const field = fieldsIn(({ artwork }) => artwork);
const limits = placesIn<Limits>();
const width = fineLength(fromMm(5), ({ artwork }, most) => artwork.tooWide(most));

/** The widths a shop trusts its film with. */
export const limitsTable = formTable({
  name: 'limits',
  fields: {
    stroke: field(limits.to('stroke'), width, 'stroke'),
    opening: field(limits.to('opening'), width, 'opening'),
    choke: field(limits.to('choke'), width, 'choke'),
    white: field(limits.to('white'), width, 'thinnestWhite'),
  },
});
