// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheet/html_style.h"

#include "core/sheet/markup.h"
#include "core/sheet/paper_colours.h"

#include <string_view>

namespace lapwright::sheet {
namespace {

constexpr std::string_view rules = R"(* { box-sizing: border-box; }
html { background: #fff; color: var(--ink); }
body { margin: 0; font: 10pt/1.35 "DejaVu Sans", sans-serif; font-variant-numeric: tabular-nums; }
main { max-width: 190mm; margin: 10mm auto; padding: 0 5mm; }
p, h1, h2, ul, ol { margin: 0; padding: 0; }
h1 { font-size: 20pt; line-height: 1.15; }
h2 { font-size: 9pt; margin: 8pt 0 3pt; break-after: avoid; }
.sentence { margin: 2pt 0 4pt; }
.place, .try, footer { color: var(--faint); }
.place, .side, .evidence, .try { font-size: 8pt; }
.side { font-weight: bold; }
.for-a { color: var(--a); }
.for-b { color: var(--b); }
.plot { display: block; width: 100%; height: auto; margin: 6pt 0; }
.plot text { font-size: 7px; fill: var(--faint); }
.plot .number { font-size: 8px; font-weight: bold; fill: #fff; }
.findings { list-style: none; counter-reset: finding; border-bottom: 0.6pt solid var(--rule); }
.findings li { position: relative; padding: 5pt 0 5pt 24pt; border-top: 0.6pt solid var(--rule); break-inside: avoid; }
.findings li::before { counter-increment: finding; content: counter(finding); position: absolute; left: 0; top: 5pt;
  width: 14pt; height: 14pt; border-radius: 7pt; background: var(--ink); color: #fff; font: bold 9pt/14pt sans-serif;
  text-align: center; print-color-adjust: exact; -webkit-print-color-adjust: exact; }
.claim { font-size: 9pt; font-weight: bold; }
.worth { float: right; margin-left: 12pt; font-size: 9pt; font-weight: bold; }
.columns { display: grid; grid-template-columns: 57fr 43fr; gap: 0 18pt; }
table { width: 100%; border-collapse: collapse; font-size: 8pt; }
tr { break-inside: avoid; }
tbody tr { border-top: 0.6pt solid var(--rule); }
thead { color: var(--faint); font-size: 7pt; }
th { font-weight: normal; text-align: right; }
tbody th { text-align: left; overflow-wrap: anywhere; }
.corner th { font-weight: bold; }
td { text-align: right; padding: 1pt 0 1pt 6pt; }
.bar { display: inline-block; width: 36pt; height: 5pt; vertical-align: middle; }
.notes, .remarks { list-style: none; font-size: 8pt; overflow-wrap: anywhere; }
.remarks li, .notes li { margin-bottom: 2pt; }
.second { break-before: page; }
footer { margin-top: 10pt; padding-top: 4pt; border-top: 0.6pt solid var(--rule); font-size: 7pt; break-inside: avoid; }
@media (max-width: 600px) { .columns { display: block; } }
@media print {
  main { max-width: none; margin: 0; padding: 0; }
  body { line-height: 1.25; }
  .findings li { padding-top: 3pt; padding-bottom: 3pt; }
  .findings li::before { top: 3pt; }
  td, th { padding-top: 0; padding-bottom: 0; }
  .plot { margin: 2pt 0; }
  footer { margin-top: 4pt; }
}
)";

} // namespace

std::string html_style(bool us_letter) {
    return std::string("@page { size: ") + (us_letter ? "letter" : "A4") +
           " portrait; margin: 12mm 14mm; }\n:root { --ink: " + colour_text(colours::ink) +
           "; --faint: " + colour_text(colours::faint_ink) + "; --rule: " + colour_text(colours::rule) +
           "; --a: " + colour_text(colours::blue_a) + "; --b: " + colour_text(colours::vermilion_b) + "; }\n" +
           std::string(rules);
}

} // namespace lapwright::sheet
