import type { AsideReason } from '../../../src/editing';
import type { CodeProblem, SealProblem } from '../../../src/hand-over';
import type { CameraProblem } from '../../../src/hand-over/browser';
import { counted, type Ways, whole } from '../format';

/** Handing a run from one device to another. */
export const handOver = {
  open: 'Pass to another device',
  title: 'Pass to another device',
  give: (run: string) => `Pass ${run} to another device`,
  giveHint:
    'Another device cuts and presses this run, without a network. It gets orders, garments, transfers, recipes, equipment and ticks. Nothing of it can be edited there but ticks.',
  draft: (run: string) =>
    `${run} is a draft and may still change. Lock it for print in the Film room, then hand it over.`,
  back: (run: string) => `Hand back what was ticked on ${run}`,
  backHint: 'The device it came from takes it in and keeps what was ticked there, too.',
  what: 'Hand over',
  whats: {
    ticks: 'what is new since it was taken in last',
    'all-ticks': 'everything ticked here, once more',
    run: 'the whole run, to a third device',
  },
  takenInThere: 'The other device has it',
  handedBackNote: 'From now on only what is new is handed back.',
  asFile: 'Save as a file',
  asFileHint: 'With small pictures of the artwork. Bring it over on a stick, or send it as you send files.',
  asCodes: 'Show as codes',
  asCodesHint: 'The other device reads them from this screen with its camera.',
  boxesAlone:
    'The outlines of copies are too much for twelve codes: the other device shows and orders boxes. A file carries them.',
  tooMany: 'This is too much for twelve codes. Save it as a file instead and open that on the other device.',
  nothingTicked: 'Nothing was ticked or spoiled here yet that the other device does not know.',
  fileName: (run: string, kind: 'run' | 'ticks') =>
    kind === 'run' ? `${run}.rollwright` : `${run} ticks.rollwright`,
  codeOf: (number: number, of: number, ways: Ways) => `Code ${whole(number, ways)} of ${whole(of, ways)}`,
  codesHint: 'Any order will do, and twice does no harm. The other device says which are still missing.',
  previous: 'Code before',
  next: 'Next code',
  play: 'One after another',
  pause: 'Stay at this one',
  take: 'Take in',
  takeHint: 'Open what another device shows or has saved: a run, or what was ticked on one.',
  camera: 'Read codes with the camera',
  cameraStop: 'Turn the camera off',
  cameraHint:
    'Hold still and straight before the screen. The whole code with its white edge fills most of the picture.',
  files: 'Open files or pictures of codes',
  filesHint: 'Files saved by “Save as a file”, or photographs of codes; several at once will do.',
  cameraProblems: {
    'no-camera': 'No camera was found. Open pictures of the codes, or the file.',
    'not-allowed':
      'The camera may not be used here. Allow it in the browser’s settings for this page, or open pictures of the codes, or the file.',
    'in-use':
      'The camera gives no picture: another program may be using it. Close that and try again, or open pictures of the codes, or the file.',
    lost: 'The camera was taken away. What was read is kept; turn it on again, or open pictures of the codes, or the file.',
    'not-secure':
      'The browser gives no camera to a page that did not come over HTTPS. Open pictures of the codes, or the file.',
  } satisfies Record<CameraProblem, string>,
  read: (count: number, of: number, ways: Ways) => `${whole(count, ways)} of ${whole(of, ways)} codes read`,
  missing: (numbers: readonly number[], ways: Ways) =>
    `Still missing: ${numbers.map((number) => whole(number + 1, ways)).join(', ')}.`,
  anew: 'Begin anew with another',
  codeProblems: {
    'not-code': 'That is a code, but none that Rollwright shows. Nothing was changed.',
    damaged: 'That code was not read whole. Nothing was changed; show it once more.',
    newer:
      'That code was made by a newer version. Nothing was changed; update this device, then read it again.',
    other:
      'That code is of another hand-over. Nothing was changed; go on with the one that was begun, or begin anew.',
  } satisfies Record<CodeProblem | 'other', string>,
  noCode: (file: string) =>
    `“${file}” is no hand-over, and no code was found in it. Nothing was changed. A picture must show the whole code with its white edge, sharp.`,
  sealProblems: {
    'not-hand-over': 'That is no hand-over of Rollwright’s. Nothing was changed.',
    damaged:
      'That hand-over is damaged: a part is missing or was changed. Nothing was changed here; hand it over again.',
    newer:
      'That hand-over was made by a newer version. Nothing was changed here; update this device, then take it in.',
    'part-missing':
      'That hand-over is of an older version, and the part that reads it could not be fetched. Nothing was changed here; reload the page with the network on, then take it in.',
  } satisfies Record<SealProblem, string>,
  failed: 'It could not be handed over. Nothing was changed.',
  notWriting: 'Another tab writes this book. Take it over there, or take it in there.',
  taken: {
    run: (run: string) =>
      `${run} is here, to be cut and pressed. Tick what is done, then hand the ticks back.`,
    again: (run: string, ticks: number, ways: Ways) =>
      `${run} is up to date${ticks > 0 ? `, with ${counted(ticks, 'tick', 'ticks', ways)} more` : ''}; what was ticked here is kept.`,
    ticks: (run: string, ticks: number, spoilages: number, ways: Ways) =>
      [
        `${run}: ${counted(ticks, 'tick', 'ticks', ways)} taken in; those made here are kept.`,
        ...(spoilages > 0
          ? [`${counted(spoilages, 'copy was', 'copies were', ways)} spoiled there and can be printed again.`]
          : []),
      ].join(' '),
    aside: (run: string, why: AsideReason) =>
      `${why === 'unknown' ? `${run} is not on this device` : run}: kept aside in the Press room.`,
  },
  received: (when: string) => `Received ${when}`,
  receivedHint:
    'This run came from another device, which keeps its film and closes it. Tick here and hand the ticks back.',
  handBack: (count: number, ways: Ways) =>
    count === 0 ? 'Hand ticks back' : `Hand back ${whole(count, ways)} new`,
  remove: 'Take off this device',
  removed: (run: string) => `${run} is off this device. What was ticked stays, should it come again.`,
  aside: 'Kept aside',
  asideOf: (run: string, ticks: number, spoilages: number, when: string, ways: Ways) =>
    `${run}: ${counted(ticks, 'tick', 'ticks', ways)}${spoilages > 0 ? `, ${counted(spoilages, 'copy', 'copies', ways)} spoiled` : ''}, handed over ${when}.`,
  asideWhy: {
    unknown: 'That run is not on this device. Take the run in first.',
    draft: 'That run is a draft here again. Lock it first.',
    changed: 'That run was locked again here since: ticks of jobs that are no more will count for nothing.',
    closed: 'That run is closed here since. Taken in, they are kept with it; it stays closed.',
  } satisfies Record<AsideReason, string>,
  takeAside: 'Take them in',
  dropAside: 'Discard',
  dropped: 'Discarded. Undo brings them back.',
  asideTaken: 'Taken in.',
};
