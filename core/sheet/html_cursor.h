// SPDX-License-Identifier: GPL-3.0-or-later
// The HTML sheet's one script: a cursor by finger, mouse or arrow keys over the plots, and what is known at its place
// in words.  The words come ready in an attribute; the script reads no other data and reaches for nothing.  It holds
// neither & nor <, so that the file stays XML.
#pragma once

#include <string_view>

namespace lapwright::sheet {

inline constexpr std::string_view cursor_script = R"(
'use strict';
for (const figure of document.querySelectorAll('figure.plots')) {
  const words = figure.dataset.words.split('\n');
  const readout = figure.querySelector('.readout');
  const plots = figure.querySelectorAll('svg');
  let now = 0;
  const show = index => {
    now = Math.max(0, Math.min(words.length - 1, index));
    readout.textContent = words[now];
    for (const svg of plots) {
      const line = svg.querySelector('.cursor');
      const x = Number(svg.dataset.left) + Number(svg.dataset.width) * now / (words.length - 1);
      line.setAttribute('x1', x);
      line.setAttribute('x2', x);
      line.setAttribute('visibility', 'visible');
    }
  };
  const follow = event => {
    const svg = event.currentTarget;
    const box = svg.getBoundingClientRect();
    const x = (event.clientX - box.left) * svg.viewBox.baseVal.width / box.width - Number(svg.dataset.left);
    show(Math.round(x / Number(svg.dataset.width) * (words.length - 1)));
  };
  for (const svg of plots) {
    svg.addEventListener('pointerdown', follow);
    svg.addEventListener('pointermove', follow);
  }
  figure.addEventListener('keydown', event => {
    const steps = {ArrowLeft: -1, ArrowRight: 1, Home: -words.length, End: words.length};
    if (event.key in steps) {
      show(now + steps[event.key]);
      event.preventDefault();
    }
  });
}
)";

// Of the script's bytes, base64 of SHA-256, by which the file's own policy lets it run (W3C Content Security Policy
// Level 3, 6.7.2.3): no other script does.  The browser test fails where it is not the script's.
inline constexpr std::string_view cursor_script_hash = "xv1KuwK5pmfeGjEeXtzCbdZ67cx6SR6avYhTkrFj4WM=";

} // namespace lapwright::sheet
