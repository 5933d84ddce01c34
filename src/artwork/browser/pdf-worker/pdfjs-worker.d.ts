/** What reads PDF for pdf.js, which publishes no types for it. */
declare module 'pdfjs-dist/legacy/build/pdf.worker.mjs' {
  export const WorkerMessageHandler: { initializeFromPort(port: MessagePort): void };
}
