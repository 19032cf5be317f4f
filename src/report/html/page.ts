/** The shell of every page: one file, no network, a policy that lets nothing run but the page's own script. */
import { html, type Markup, own } from './markup.ts';
import { script } from './script.ts';
import { sha256Base64 } from './sha256.ts';
import { style } from './style.ts';

export interface Page {
  readonly title: string;
  readonly body: readonly Markup[];
}

/** A whole document in pieces. Nothing in it is fetched, and nothing a draft says can be run. */
export function page({ title, body }: Page): readonly string[] {
  const policy = `default-src 'none'; style-src 'sha256-${sha256Base64(style)}'; script-src 'sha256-${sha256Base64(script)}'; base-uri 'none'; form-action 'none'`;
  const head = html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<meta name="referrer" content="no-referrer">
<title>${title}</title>
<style>${own(style)}</style>
</head>
<body>
<a class="skip" href="#main">Skip to the report</a>
`;
  const foot = html`
<script>${own(script)}</script>
</body>
</html>
`;
  return [head.markup, ...body.map((piece) => piece.markup), foot.markup];
}
