/** How the pages look: paper and ink, one accent, signs before colours. Black on white when printed. */
export const style = `
:root{color-scheme:light dark;--paper:#fbfaf6;--sheet:#fff;--ink:#1d2226;--soft:#535c63;--line:#c9c6bb;--faint:#eeece4;--accent:#0b5563;--stop:#9c1c1c;--ask:#6a4b00;--taste:#3f4c8a;--stop-bg:#fbe3df;--ask-bg:#fbeeca;--taste-bg:#e6e8f7;--square:#e3efe9;--square-line:#8fb0a3;--thread:#b0306a}
@media (prefers-color-scheme:dark){:root{--paper:#14181b;--sheet:#1b2125;--ink:#e9e7e1;--soft:#aab3b8;--line:#3d474d;--faint:#232b30;--accent:#7fcbd8;--stop:#ff9d92;--ask:#efc667;--taste:#b3bdff;--stop-bg:#4a1f1c;--ask-bg:#42340f;--taste-bg:#2a2f55;--square:#27403a;--square-line:#55786d;--thread:#ff8fbf}}
*{box-sizing:border-box}
html{scroll-behavior:auto}
body{margin:0;background:var(--paper);color:var(--ink);font:16px/1.5 "Iowan Old Style","Palatino Linotype",Palatino,"Book Antiqua",Georgia,serif}
a{color:var(--accent)}
:focus-visible{outline:3px solid var(--accent);outline-offset:2px}
[tabindex="-1"]:focus{outline:none}
.skip{position:absolute;left:-200vw;top:0;background:var(--sheet);padding:.6rem 1rem;z-index:9}
.skip:focus{left:0}
.vh{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%);white-space:nowrap}
header,main,footer{max-width:96rem;margin:0 auto;padding:0 1.25rem}
header{padding-top:1.25rem}
h1{font-size:1.9rem;line-height:1.15;margin:0 0 .25rem}
h2{font-size:1.45rem;line-height:1.2;margin:2.2rem 0 .5rem;border-bottom:2px solid var(--ink);padding-bottom:.2rem}
h3{font-size:1.12rem;margin:1.5rem 0 .4rem}
h4{font-size:1rem;margin:0 0 .3rem}
p{margin:.35rem 0}
.meta,.small{color:var(--soft);font-size:.9rem}
.lead{font-size:1.1rem;max-width:60rem}
nav ul{list-style:none;display:flex;flex-wrap:wrap;gap:.2rem 1.1rem;padding:0;margin:.6rem 0}
.num,code,.draft,pre,.id,svg text,td,th{font-variant-numeric:tabular-nums}
.filter,.views{border:1px solid var(--line);border-radius:.4rem;padding:.3rem .8rem .5rem;margin:.8rem 0;display:flex;flex-wrap:wrap;gap:.2rem 1rem;align-items:center}
.filter[hidden],.views[hidden],[hidden]{display:none!important}
.filter legend,.views legend{font-size:.9rem;color:var(--soft);padding:0 .3rem}
label{padding:.25rem 0;display:inline-flex;gap:.35rem;align-items:center;min-height:1.75rem}
button{font:inherit;padding:.3rem .9rem;border:1px solid var(--accent);border-radius:.4rem;background:var(--sheet);color:var(--accent);cursor:pointer;min-height:2rem}
.panes{display:grid;grid-template-columns:minmax(22rem,5fr) minmax(24rem,6fr);gap:1.5rem;align-items:start}
.pane{min-width:0}
@media screen and (min-width:62rem) and (min-height:34rem){.pane{max-height:calc(100vh - 2rem);overflow:auto;position:sticky;top:1rem;padding:0 .5rem .5rem 4px;border-top:1px solid var(--line)}.pane h2{margin-top:.8rem}}
@media (max-width:61.99rem){.panes{display:block}}
.finding{background:var(--sheet);border:1px solid var(--line);border-left:.5rem solid var(--taste);border-radius:.3rem;padding:.7rem .9rem;margin:0 0 .9rem;break-inside:avoid}
.finding.error{border-left:.5rem double var(--stop)}
.finding.query{border-left:.5rem dashed var(--ask)}
.finding h3{font-size:1rem;margin:0 0 .3rem;display:flex;gap:.5rem;align-items:baseline;flex-wrap:wrap}
.finding .no,.note .no{font-weight:700;border:1.5px solid currentColor;border-radius:50%;min-width:1.55rem;height:1.55rem;line-height:1.4rem;text-align:center;display:inline-block;font-size:.82rem;padding:0 .2rem;flex:none}
.error .no,.no.error{color:var(--stop)}.query .no,.no.query{color:var(--ask)}.style .no,.no.style{color:var(--taste)}
.finding .where{margin-left:auto;font-weight:400;font-size:.9rem}
.finding ul{margin:.3rem 0;padding-left:1.2rem}
.finding .id{font-size:.8rem;color:var(--soft);display:flex;gap:1rem;flex-wrap:wrap;align-items:center;margin-top:.4rem}
.edit{background:var(--faint);padding:.3rem .6rem;border-radius:.25rem}
.edit del{text-decoration-thickness:2px}.edit ins{text-decoration:none;font-weight:700;border-bottom:2px solid}
table{border-collapse:collapse;font-size:.92rem}
caption{text-align:left;color:var(--soft);font-size:.88rem;padding:.2rem 0}
th,td{padding:.16rem .6rem;text-align:right;border-bottom:1px solid var(--line);vertical-align:top}
th{font-weight:600}
thead th{border-bottom:2px solid var(--ink);vertical-align:bottom}
th[scope=row],td.t,th.t{text-align:left}
th[scope=row]{font-weight:400}
.sum{margin:.4rem 0}
@media (max-width:30rem){.sum{font-size:.88rem}.sum th,.sum td{padding:.16rem .22rem}}
.differs{font-weight:700;color:var(--stop)}
.scroll{overflow-x:auto;max-width:100%}
.draft{list-style:none;margin:.5rem 0;padding:0;font-size:.98rem;background:var(--sheet);border:1px solid var(--line);border-radius:.3rem}
.draft li{display:grid;grid-template-columns:3.2rem minmax(0,1fr) minmax(0,15rem);gap:.6rem;padding:.06rem .6rem .06rem 0;scroll-margin:6rem}
.draft li:target,.finding:target,.not li:target{outline:3px solid var(--accent)}
.draft .ln{color:var(--soft);font-size:.78rem;text-align:right;text-decoration:none;padding-top:.22rem;white-space:nowrap}
.draft .ln a{text-decoration:none;color:inherit}
.draft .tx{white-space:pre-wrap;overflow-wrap:anywhere;min-height:1.5em}
.draft .h{font-weight:700}
.note{font-size:.85rem;line-height:1.35;border-left:2px solid currentColor;padding-left:.5rem;margin-bottom:.25rem;display:flex;gap:.4rem}
.note a{color:inherit;text-decoration:none}.note a:hover{text-decoration:underline}
.note.error{color:var(--stop)}.note.query{color:var(--ask)}.note.style{color:var(--taste)}.note.unread{color:var(--soft)}
@media (max-width:78rem){.draft li{grid-template-columns:3.2rem minmax(0,1fr)}.draft .notes{grid-column:2}}
mark{color:inherit;background:none;border-radius:.15rem;padding:.02rem .05rem}
mark.error{background:var(--stop-bg);text-decoration:underline double var(--stop) 1.5px;text-underline-offset:.18em}
mark.query{background:var(--ask-bg);text-decoration:underline dashed var(--ask) 1.5px;text-underline-offset:.18em}
mark.style{background:var(--taste-bg);text-decoration:underline dotted var(--taste) 2px;text-underline-offset:.18em}
mark.unread{text-decoration:underline wavy var(--soft) 1px;text-underline-offset:.18em}
mark.also{border-bottom:1px dotted var(--soft)}
pre{white-space:pre-wrap;background:var(--sheet);border:1px solid var(--line);border-radius:.3rem;padding:.8rem 1rem;font:inherit;max-width:60rem;overflow-wrap:anywhere}
details{margin:.4rem 0}summary{cursor:pointer;padding:.15rem 0;min-height:1.75rem}
.ok{border-left:.5rem solid var(--square-line);background:var(--sheet);padding:.6rem .9rem}
svg.plan{display:block;margin:.3rem 0 .8rem}
svg text{font:10px/1 ui-sans-serif,system-ui,sans-serif;fill:var(--ink)}
svg .on{paint-order:stroke;stroke:var(--sheet);stroke-width:4px}
svg .sq{fill:var(--square);stroke:var(--square-line);stroke-width:.7}
svg .thin{stroke:var(--square-line);stroke-width:.6;fill:none}
svg .hatch{stroke:var(--soft);stroke-width:1;fill:none}
svg .held{stroke:var(--soft);stroke-width:.7;stroke-dasharray:3 2}
svg .off{fill:var(--sheet);stroke:var(--soft);stroke-width:.7}
svg .edge{stroke:var(--ink);stroke-width:3;fill:none}
svg .start{stroke:var(--ink);stroke-width:2;stroke-dasharray:2 2;fill:none}
svg .taken{stroke:var(--ink);stroke-width:1.5;stroke-dasharray:1 3;fill:none}
svg .waits{stroke:var(--soft);stroke-width:.8;stroke-dasharray:1 4;fill:none}
svg .gain,svg .loss,svg .cross{stroke:var(--ink);stroke-width:1.3;fill:none;stroke-linecap:round}
svg .loss.two{stroke-width:2.2}
svg .hole{fill:var(--sheet);stroke:var(--ink);stroke-width:1.1}
svg .thread{stroke:var(--thread);stroke-width:2.2;fill:none}
svg .turn{fill:var(--ink)}
svg .torn{stroke:var(--stop);stroke-width:1.4;fill:none}
svg .cut{stroke:var(--ink);stroke-width:1.2;fill:none}
svg .brace{stroke:var(--soft);stroke-width:1.2;fill:none}
svg .step{stroke:var(--ink);stroke-width:1.4;fill:none}
svg a{text-decoration:none;cursor:pointer}
svg a:hover .sq,svg a:target .sq,svg a:has(g:target) .sq{fill:var(--ask-bg);stroke:var(--ink)}
svg a:target text,svg a:has(g:target) text{font-weight:700;text-decoration:underline}
.legend{display:flex;flex-wrap:wrap;gap:.3rem 1.2rem;list-style:none;padding:0;margin:.5rem 0;font-size:.9rem}
.legend li{display:flex;gap:.4rem;align-items:center}
.view-gauge .squares:not(.both),.view-squares .gauge{display:none}
.view-checkpoints tr.plain,.view-checkpoints .folded{display:none}
.sheet{border-collapse:separate;border-spacing:0}
.sheet thead th{position:sticky;top:0;background:var(--paper)}
.sheet thead th[scope=colgroup]{text-align:left;border-left:1px solid var(--line)}
.sheet tbody th[scope=row]{min-width:12rem;position:sticky;left:0;background:var(--paper)}
.sheet td.b,.sheet th.b{border-left:1px solid var(--line)}
.sheet tr.section th{text-align:left;font-weight:700;padding-top:.9rem}
.sheet tr:target{outline:3px solid var(--accent)}
.box{display:inline-block;width:1.1em;height:1.1em;border:1.5px solid var(--ink);vertical-align:-.15em}
.fill{display:inline-block;min-width:5.5em;border-bottom:1.5px solid var(--ink);height:1.3em}
.lines{border-bottom:1px solid var(--line);height:2.1rem}
.ticks td,.ticks th{padding:.35rem .6rem}
.ticks.sheet tbody th[scope=row]{min-width:0}
@media (max-width:40rem){.ticks td,.ticks th{padding:.35rem .3rem}.ticks .fill{min-width:3.5em}}
footer{margin-top:3rem;padding-bottom:2rem;color:var(--soft);font-size:.88rem;border-top:1px solid var(--line);padding-top:.8rem}
@media print{
@page{margin:16mm}
:root{--paper:#fff;--sheet:#fff;--ink:#000;--soft:#333;--line:#999;--faint:#fff;--accent:#000;--stop:#000;--ask:#000;--taste:#000;--stop-bg:#fff;--ask-bg:#fff;--taste-bg:#fff;--square:#fff;--square-line:#888;--thread:#000}
body{font-size:10.5pt}
details:not([open]),.screen{display:none}
header,main,footer{max-width:none;padding:0}
nav,.skip,.filter,.views,button{display:none!important}
.panes{display:block}
.draft{border:0}.draft li{grid-template-columns:2.4rem minmax(0,1fr) 5.5cm}.draft .notes{grid-column:auto}
h2,h3,h4,h2+p{break-after:avoid}
h2{margin-top:1.2rem}
tr,.note,.draft li{break-inside:avoid}
svg.plan{max-width:100%;height:auto}
.sheet thead th,.sheet tbody th[scope=row]{position:static;background:none}
.sheet:not(.ticks){font-size:8.5pt;line-height:1.25}
.sheet:not(.ticks) td,.sheet:not(.ticks) th{padding:.04rem .45rem}
.sheet tr.section{break-after:avoid}
.sheet:not(.ticks) tbody th[scope=row]{min-width:0}
a{text-decoration:none;color:inherit}
.draft .ln a{display:none}
:target{outline:0!important}
.finding[hidden]{display:block!important}
}
`;
