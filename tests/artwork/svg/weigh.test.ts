import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fileFacts, readSvgHeader } from '../../../src/artwork';
import { weighSvg } from '../../../src/artwork/svg/weigh';
import { bombs, ordinary, startsWithoutEnd } from './bombs';

/** Any bytes, and bytes that look like an SVG more often than not. */
const anyText = fc.oneof(
  fc.uint8Array({ maxLength: 2_000 }).map((bytes) => new TextDecoder().decode(bytes)),
  fc
    .array(
      fc.oneof(
        fc.constantFrom(
          ...[
            '<svg ',
            '<g id="a">',
            '</g>',
            '<use href="#a"/>',
            '<!--',
            '-->',
            '<![CDATA[',
            ']]>',
            '<!DOCTYPE s [',
            ']>',
          ],
          ...[
            '<!ENTITY a "b">',
            '&a;',
            '&#99999999;',
            '<style>',
            '</style>',
            '.a{fill:url(#a)}',
            '@media{',
            '}',
            '\\',
            '"',
            "'",
          ],
          ...[
            'filter="url(#a)"',
            '<filter id="f">',
            '<feMerge>',
            '<feMergeNode in="r"/>',
            '<feBlend result="r"/>',
            '<?xml',
            '?>',
          ],
          ...['>', '/', '=', ' ', 'style="', 'fill:', 'url(', ')', '/*', '*/'],
        ),
        fc.string({ maxLength: 5 }),
      ),
      { maxLength: 300 },
    )
    .map((parts) => parts.join('')),
);

describe('an SVG is weighed before it is drawn', () => {
  it.each(bombs)('%s: refused as %s', (_, problem, text) => {
    expect(weighSvg(text)).toEqual({ ok: false, problem });
  });

  it.each(ordinary)('%s is drawn', (_, text) => {
    expect(weighSvg(text)).toMatchObject({ ok: true });
  });

  it('counts each element as often as it is drawn, and each step as often as it is run', () => {
    const text = `<svg><filter id="f"><feFlood result="a"/><feOffset in="SourceGraphic"/><feBlend in2="a"/></filter>
      <g id="g"><path filter="url(#f)"/><path/></g><use href="#g"/><use href="#g"/></svg>`;
    // Ten in the file, the filter's four once more for each of three that are filtered, and two groups of three.
    expect(weighSvg(text)).toEqual({ ok: true, value: { elements: 10 + 4 * 3 + 2 * 3, steps: 3 * 3 } });
  });

  it('a file of starts without an end is no image', () => {
    expect(readSvgHeader(startsWithoutEnd)).toEqual({ ok: false, problem: 'not-image' });
    expect(fileFacts(new TextEncoder().encode(startsWithoutEnd)).outside).toBe(0);
  });

  it.each(
    [
      '<svg ',
      '<svg a="',
      '<!--',
      '<![CDATA[',
      '<!DOCTYPE [',
      '<!ENTITY ',
      '&',
      '<style>{',
      '<a b=',
      '<g>',
      "<?'",
    ].map((part) => [part]),
  )('looks at each sign a few times at most where %s is all there is', (part) => {
    for (const count of [1_000, 2_000]) {
      const text = part.repeat(count);
      const meter = { steps: 0 };
      weighSvg(text, meter);
      expect(meter.steps).toBeLessThan(12 * text.length);
    }
  });

  it('is linear in what it reads and never throws, whatever the bytes', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const meter = { steps: 0 };
        weighSvg(text, meter);
        readSvgHeader(text);
        fileFacts(new TextEncoder().encode(text));
        expect(meter.steps).toBeLessThanOrEqual(60 + 12 * text.length);
      }),
      { numRuns: 1_000 },
    );
  });
});
