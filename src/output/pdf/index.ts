export { type PdfFacts, trueSizeDocument } from './document';
export { codePoints, embedFaces, type Face, type FontFiles, runsOf } from './faces';
export { drawnAsText, type TextPicture } from './text-picture';
