/**
 * `npm run bench [-- --seconds 2 --seed 1 --days 10000 --damage 100000 --places 500 --cases 100000 --kills 500 --only sets|zero|packers|first|layouts|pressing|costs|quiet|fits|codes|shapes|artwork|frames|outlines|image|lighthouse|log|soak|tables|size|damaged|rooms|fuzz|kills|mutation]`: the
 * published sets, strips cut up without waste, the packers of npm, the time to a first layout, random days at the film held against their rules, schedules of the demo day, edits with a long history of undo, intervals of rates found in logs, codes as a camera sees them, shapes around the limits of film, and of the built app the check
 * of a large artwork, frame times, layouts by outlines, the writing of a print-ready image, the opening of a long log, of long tables and of large books, and
 * pages killed at work. `lighthouse`, which fetches its tool, and `mutation`, which takes an hour and more,
 * run when they are asked for alone; `--folder editing`, MUTATION_SHARE and MUTATION_SEED choose a part of the code.
 */
import { parseArgs } from 'node:util';
import { benchArtwork } from './artwork';
import { benchCodes } from './codes';
import { benchCosts } from './costs';
import { benchDamaged } from './damaged';
import { benchDamagedRooms } from './damaged-rooms';
import { benchFirstLayout } from './first-layout';
import { benchFits } from './fits';
import { benchFrames } from './frames';
import { benchFuzz } from './fuzz';
import { benchKills } from './kills';
import { benchLayouts } from './layouts';
import { benchLighthouse } from './lighthouse';
import { benchLog } from './log';
import { benchMutation } from './mutation';
import { benchOutlineRoom } from './outline-room';
import { benchPressing } from './pressing';
import { benchPrintImage } from './print-image';
import { benchQuietEdits } from './quiet-edits';
import { benchPackers, benchSets } from './sets';
import { benchShapes } from './shapes';
import { benchSize } from './size';
import { benchSoak } from './soak';
import { benchTables } from './tables';
import { benchZeroWaste } from './zero-waste';

const { values } = parseArgs({
  options: {
    seconds: { type: 'string', default: '2' },
    seed: { type: 'string', default: '1' },
    days: { type: 'string', default: '10000' },
    damage: { type: 'string', default: '100000' },
    places: { type: 'string', default: '500' },
    cases: { type: 'string', default: '100000' },
    kills: { type: 'string', default: '500' },
    only: { type: 'string' },
    folder: { type: 'string' },
  },
});
const runs = (part: string) => values.only === undefined || values.only === part;

if (runs('first')) benchFirstLayout();
if (runs('layouts')) benchLayouts(Number(values.days), Number(values.seed));
if (runs('damaged')) benchDamaged(Number(values.damage), Number(values.seed));
if (runs('rooms')) await benchDamagedRooms(Number(values.places), Number(values.seed));
if (runs('pressing')) benchPressing();
if (runs('costs')) benchCosts();
if (runs('quiet')) benchQuietEdits();
if (runs('fits')) benchFits();
if (runs('codes')) benchCodes();
if (runs('shapes')) benchShapes();
if (runs('sets')) await benchSets(Number(values.seconds), Number(values.seed));
if (runs('zero')) benchZeroWaste(2 * Number(values.seconds), Number(values.seed));
if (runs('packers')) benchPackers(Number(values.seconds), Number(values.seed));
if (runs('artwork')) await benchArtwork();
if (runs('frames')) await benchFrames();
if (runs('outlines')) await benchOutlineRoom();
if (runs('image')) await benchPrintImage();
if (values.only === 'lighthouse') await benchLighthouse();
if (runs('soak')) await benchSoak();
if (runs('log')) await benchLog();
if (runs('tables')) await benchTables();
if (runs('size')) await benchSize();
if (runs('fuzz')) benchFuzz(Number(values.cases));
if (runs('kills')) await benchKills(Number(values.kills), Number(values.seed));
if (values.only === 'mutation') await benchMutation(values.folder?.split(','));
