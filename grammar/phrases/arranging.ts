/**
 * How the stitches are laid out on the needles.
 *
 *     Divide sts over 3 dpns (15-30-15) · slip 14 sts onto Needle 1, … · 16 sts on each needle
 */
import { Any, Close, Comma, Count as CountToken, Dash, FullStop, type KnitToken, Open, Semicolon, Stitch, W, Word } from '../tokens.ts';
import type { Arrange, Count } from '../tree.ts';
import { NeedleParts, numbered } from './needle-parts.ts';

const spread = /^(divide|distribute|arrange|rearrange|redistribute|spread|split|dividing|distributing|arranging|slide)$/;

export class Arranging extends NeedleParts {
  /** "Divide sts evenly over 4 dpns (16 sts per needle)", "Arrange sts on 3 needles (15-30-15)", "N1: 16; N2: 32; N3: 16". */
  protected arrangeAhead(): boolean {
    const name = this.needleName();
    if (name > 0) return this.arrangesAfter(name + 1);
    if (this.at(1, W.Place) && !this.ontoTwoAhead()) return !/^(slide|set aside)/.test(this.image(1)) && this.onNeedle();
    if (this.ontoTwoAhead()) return true;
    if (!this.at(1, Word, W.Place) || !spread.test(this.image(1))) return false;
    for (let ahead = 2; ahead < 20; ahead += 1) {
      if (Number.isNaN(this.LA(ahead).startOffset) || this.at(ahead, FullStop, Semicolon)) return false;
      if (this.at(ahead, W.Needle) || numbered.test(this.image(ahead)) || (/^n$/.test(this.image(ahead)) && this.at(ahead + 1, CountToken)))
        return !this.at(1, W.Place) || this.at(ahead - 1, W.Each, Word);
    }
    return false;
  }

  /** "slip first 8 sts to one needle and the other 8 sts to a second needle". */
  private ontoTwoAhead(): boolean {
    if (!this.at(1, Word, W.Place, Stitch)) return false;
    return /^(?:slip|sl|place|put|transfer|arrange)\s+(?:the\s+)?(?:first\s+|next\s+)?[\d ([\]),:/–-]+\s*(?:sts|stitches)\s+(?:on|onto|to)\s+(?:one|a|another|the first|first)\s+(?:dpn|needle)s?,?\s+and\s+(?:the\s+)?(?:other|next|remaining|rem|last|second)\b[^.;]*\bneedle/i.test(
      this.text.slice(this.from(), this.from() + 160),
    );
  }

  /** "place first 30 sts on needle 1". */
  private onNeedle(): boolean {
    for (let ahead = 2; ahead < 9; ahead += 1) {
      if (this.separator(ahead) || this.at(ahead, W.Holder)) return false;
      if (
        this.at(ahead, W.On) &&
        (numbered.test(this.image(ahead + 1)) ||
          (this.at(ahead + 1, W.Needle) && this.at(ahead + 2, CountToken)) ||
          (this.at(ahead + 1, W.Each) && this.at(ahead + 2, W.Of) && this.at(ahead + 3, CountToken)))
      )
        return true;
    }
    return false;
  }

  arrangeStep = this.RULE('arrangeStep', (): Arrange => {
    const start = this.from();
    const found: { name: string | null; count: Count }[] = [];
    const state: { needles: Count | null; perNeedle: Count | null; name: string | null; depth: number; pending: Count | null } = {
      needles: null,
      perNeedle: null,
      name: null,
      depth: 0,
      pending: null,
    };
    const two = { both: false };
    this.ACTION(() => {
      two.both = this.ontoTwoAhead();
    });
    this.CONSUME(Any);
    this.ACTION(() => {
      if (numbered.test(this.image(0))) state.name = `needle ${numbered.exec(this.image(0))?.[1]}`;
    });
    this.MANY({
      GATE: () =>
        !Number.isNaN(this.LA(1).startOffset) &&
        !this.at(1, FullStop) &&
        !(this.at(1, Semicolon) && !this.arrangeGoesOn(2)) &&
        !(this.at(1, Comma, W.And) && state.depth === 0 && !this.arrangeGoesOn(2)) &&
        !(this.at(1, Close) && state.depth === 0) &&
        !(this.at(1, Open) && this.payload(1)?.holds === 'group'),
      DEF: () => {
        const token = this.CONSUME1(Any) as KnitToken;
        this.ACTION(() => {
          if (this.at(0, Open)) state.depth += 1;
          else if (this.at(0, Close)) state.depth -= 1;
          else if (numbered.test(this.image(0))) {
            state.name = `needle ${numbered.exec(this.image(0))?.[1]}`;
            if (state.pending !== null) {
              found.push({ name: state.name, count: state.pending });
              state.pending = null;
              state.name = null;
            }
          } else if (
            this.at(0, CountToken) &&
            ((this.at(-1, W.Needle) && token.payload?.values?.length === 1) || /^n$/.test(this.image(-1)))
          ) {
            state.name = `needle ${token.payload?.values?.[0] ?? ''}`;
            if (!/\bon(?:to)?(?: needle| n)?$/i.test(this.words(start, token.startOffset))) state.pending = null;
            if (state.pending !== null) {
              found.push({ name: state.name, count: state.pending });
              state.pending = null;
              state.name = null;
            }
          } else if (this.at(0, CountToken) && (this.at(1, W.Needle) || /^(circulars?|tips?)$/.test(this.image(1))))
            state.needles = this.countOf(token);
          else if (this.at(0, CountToken)) {
            const count = this.countOf(token);
            const each = /^(?:\s*(?:sts?|stitches|loops))?\s*(?:per|on each|each|to each|on every)\b/i.test(
              this.text.slice(token.startOffset + token.image.length),
            );
            if (two.both) found.push({ name: null, count });
            else if (each) state.perNeedle = count;
            else if (state.name !== null) {
              found.push({ name: state.name, count });
              state.name = null;
            } else if (state.depth > 0 || this.at(1, Dash) || /^[([]?\d+(?:[-–/]\d+)+/.test(token.image)) found.push({ name: null, count });
            else state.pending = count;
          }
        });
      },
    });
    return this.ACTION((): Arrange => {
      const listed = this.dashed(start, found);
      return { type: 'arrange', parts: listed, needles: state.needles, perNeedle: state.perNeedle, span: this.span(start) };
    });
  });

  /** "(15-30-15)" may stand as one list of numbers, read as sizes. */
  private dashed(start: number, found: { name: string | null; count: Count }[]): { name: string | null; count: Count }[] {
    const only = found.length === 1 ? found[0] : undefined;
    if (only === undefined || only.name !== null || only.count.values.length < 2) return found;
    const words = this.text.slice(only.count.span.start - this.base, only.count.span.end - this.base);
    if (start < 0 || !/^[([]?\d+(?:[-–/]\d+)+[)\]]?$/.test(words)) return found;
    return only.count.values.map((value) => ({ name: null, count: { ...only.count, values: [value] } }));
  }

  private arrangeGoesOn(ahead: number): boolean {
    if (this.at(ahead, W.Next, W.Rem, W.Other, W.And)) return this.at(ahead + 1, CountToken, W.St, W.On);
    if (this.at(ahead, CountToken))
      return (
        this.at(ahead + 1, W.On, W.St, Close, Comma, Semicolon, FullStop, Dash) ||
        numbered.test(this.image(ahead + 1)) ||
        Number.isNaN(this.LA(ahead + 1).startOffset)
      );
    if (numbered.test(this.image(ahead))) return this.at(ahead + 1, CountToken) || this.arrangesAfter(ahead + 2);
    if (/^n$/.test(this.image(ahead)))
      return this.at(ahead + 1, CountToken) && (this.at(ahead + 2, CountToken) || this.arrangesAfter(ahead + 3));
    return this.at(ahead, W.Needle) && this.at(ahead + 1, CountToken) && (this.at(ahead + 2, CountToken) || this.arrangesAfter(ahead + 3));
  }
}
