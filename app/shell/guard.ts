/** What of Trusted Types (W3C) is needed; not every browser has them. */
interface TrustedTypes {
  createPolicy(
    name: 'default',
    rules: {
      createHTML(text: string, type: string, sink: string): string | null;
      createScriptURL(address: string): string | null;
    },
  ): unknown;
}

declare global {
  interface Window {
    readonly trustedTypes?: TrustedTypes;
  }
}

/**
 * Lets the page take code from its own origin alone, and markup only to empty an element or to read an SVG, of which nothing
 * runs. The policy of the page refuses all else where the browser has Trusted Types.
 */
export function trustOwnCode(): void {
  window.trustedTypes?.createPolicy('default', {
    createHTML: (text, _type, sink) => (text === '' || sink.startsWith('DOMParser') ? text : null),
    createScriptURL: (address) =>
      new URL(address, location.href).origin === location.origin ? address : null,
  });
}

/** Whether the page lies in a frame of another, which could lead the hand that presses its buttons. */
export const isFramed = (): boolean => window.top !== window.self;
