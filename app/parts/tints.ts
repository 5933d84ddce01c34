import type {} from 'react';

/** Tints that tell orders apart; each reaches 4.5 under white text (WCAG 2.2, contrast minimum). */
export const tints = [
  '#B4541A',
  '#4A53A4',
  '#3F7A22',
  '#A33A78',
  '#1F7180',
  '#7A5A00',
  '#6B4FA0',
  '#A63A3A',
] as const;

export const tintOf = (tint: number): string => tints[tint % tints.length] ?? tints[0];

declare module 'react' {
  interface CSSProperties {
    /** What an order is tinted with, for style sheets. */
    '--tint'?: string;
  }
}
