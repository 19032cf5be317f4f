/**
 * Where an order to work from a chart begins, and where more of it follows.
 *
 *     work Row 1 of Chart A · row 1 of Fender over 12 sts · Hawser over 12 sts · …, then Rows 1–4 once more
 */
import { Comma, Count as CountToken, Dash, Fabric, Mark, Name, PlainStitch, Semicolon, W, Word } from '../tokens.ts';
import { Told } from './told.ts';

export const chartWord = /^charts?$/;
/** Words before "over 12 sts" that name no pattern. */
const notNamed =
  /^(?:over|buttonhole|cable|slip|pass|fold|rep|yarn|once|twice|purl|knit|row|now|then|next|sew|thread|work|dec|inc|place|put|leave|hold|st|sts)$/;

export class ChartHeads extends Told {
  /** Whether an order to work from a chart begins here. */
  protected chartAhead(): boolean {
    if (this.rowOfNamedAhead() || this.verblessAhead()) return true;
    if (
      !this.at(1, W.Work, W.Foll, W.Beg, W.Cont, W.Rep, W.Patt, W.Set) &&
      !/^(?:follow|following|begin|commence|reading|read|place|working)$/.test(this.image(1)) &&
      !(this.at(1, PlainStitch) && this.payload(1)?.values === undefined)
    )
      return false;
    for (let ahead = 2; ahead < 16; ahead += 1) {
      if (chartWord.test(this.image(ahead)))
        return !/^(?:key|symbols?|legend)$/.test(this.image(ahead + 1)) && !this.at(ahead + 1, W.Marker);
      // "Beg with Row 5, work Chart A"
      if (this.at(ahead, Comma) && this.at(1, W.Beg) && this.at(ahead + 1, W.Work)) continue;
      if (this.separator(ahead) || this.at(ahead, Mark) || (this.at(ahead, PlainStitch) && ahead > 1)) return false;
    }
    return false;
  }

  /** "Chart A over 12 sts", "Hawser over next 12 sts" among the steps of a row: the verb is understood. */
  protected verblessAhead(): boolean {
    const chart = chartWord.test(this.image(1));
    if (!chart && !(this.at(1, Name, Word) && /^[A-Z]/.test(this.LA(1).image ?? '') && !notNamed.test(this.image(1)))) return false;
    let ahead = 2;
    while (ahead < 5 && this.at(ahead, Word, Name, CountToken, Fabric, W.Patt) && !/^over$/.test(this.image(ahead))) ahead += 1;
    if (!/^over$/.test(this.image(ahead)) && !(chart && this.at(ahead, W.Across, W.On))) return false;
    ahead += 1;
    while (this.at(ahead, W.Next, W.First, W.Last, W.Centre, W.These, W.Rem)) ahead += 1;
    return this.at(ahead, CountToken) && this.at(ahead + 1, W.St) && this.separator(ahead + 2);
  }

  /** "work row 1 of Fender over 12 sts", "work rnd 3 of Fender Rope over the next 12 sts": a row of a pattern known by its name. */
  private rowOfNamedAhead(): boolean {
    if (!this.at(1, W.Work) || !this.at(2, W.Row, W.Round) || !this.at(3, CountToken) || !this.at(4, W.Of)) return false;
    let ahead = 5;
    while (ahead < 8 && this.at(ahead, Word) && !/^over$/.test(this.image(ahead))) ahead += 1;
    if (ahead === 5 || !/^over$/.test(this.image(ahead))) return false;
    if (this.at(ahead + 1, W.Next, W.First, W.Last, W.Centre)) ahead += 1;
    return this.at(ahead + 1, CountToken) && this.at(ahead + 2, W.St);
  }

  /** ", then Rows 1–4 once more", ", then work Rows 1 and 2 once": more rows of the chart just named. */
  protected moreRowsAhead(): boolean {
    let ahead = 1;
    while (this.at(ahead, Comma, W.And, W.Then, Semicolon)) ahead += 1;
    if (ahead === 1) return false;
    if (this.at(ahead, W.Work, W.Rep)) ahead += 1;
    if (!this.at(ahead, W.Row, W.Round) || !this.at(ahead + 1, CountToken)) return false;
    for (let look = ahead + 2; look < ahead + 8; look += 1) {
      if (/^(?:once|twice|thrice)$/.test(this.image(look)) || (this.at(look, CountToken) && this.at(look + 1, W.Times))) return true;
      if (!this.at(look, Dash, W.To, W.And, CountToken, Comma)) return this.separator(look);
    }
    return false;
  }

  /** ", ending with a WS row", ", ending after Row 8" behind the chart. */
  protected sideAfterChart(): boolean {
    if (!this.at(1, Comma) || !this.at(2, W.Ending)) return false;
    return this.at(3, W.Rs, W.Ws) || this.at(4, W.Rs, W.Ws) || (this.at(3, W.Row, W.Round) && this.at(4, CountToken));
  }
}
