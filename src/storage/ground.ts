import type { Channel, Ground, Message } from './writer';

/** A channel among the tabs of the browser; `null` where it has none, or gives none to this page. */
function channelOf(name: string): Channel | null {
  try {
    const channel = new BroadcastChannel(name);
    return {
      tell: (message) => channel.postMessage(message),
      hear(onMessage) {
        channel.onmessage = ({ data }: MessageEvent<Message>) => onMessage(data);
      },
      close: () => channel.close(),
    };
  } catch {
    return null;
  }
}

/** What a tab of a browser stands on. */
export const browserGround = (name: string): Ground => ({
  locks: navigator.locks,
  channel: channelOf(name),
  later(run, milliseconds) {
    const timer = setTimeout(run, milliseconds);
    return () => clearTimeout(timer);
  },
});
