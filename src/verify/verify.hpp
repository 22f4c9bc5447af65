// SPDX-License-Identifier: MIT
// The second, independent look at a layout, in exact integers on the 1 µm grid, from the vehicle
// on. Uses model/ only, and its own arithmetic: never the code that made the layout.
//
// What is checked
//   complete    every piece that the vehicles ask for (panel, side, face, copy, inlay; not what is
//               left out) is placed once, with all its parts, and nothing else is
//   sane        coordinates and allowances are small enough for the arithmetic to be exact
//   true        what stays on the vehicle is what the measured panel, its edges, openings and
//               recesses ask for: tucks and stops all along, openings covered or cut out, nothing
//               over what must stay clear; seen the right way round with its arrow forward; left
//               and right, outer and inner face are mirror images
//   lapped      pieces of one panel end along the seam lines that are told, lap by the overlap, the
//               right one on top, the one with the lower number under it; also with those that are
//               not cut, being on the vehicle already
//   grip        the cut outline holds all that with its margins (straight) or its bleed, none at
//               seams, and holes only where they are to be cut at the table (contour)
//   turned      as the panel's or the film's direction allows
//   inside      the usable width, the used length, the roll; clear of flaws; no directed film from
//               a roll whose arrow is not known
//   one batch   all pieces of panels that are not batch free: new film, or stock of one batch
//   apart       no two pieces closer than the gap (contour) or over one another (straight)
//   cut         straight cuts, made in order from edge to edge, free every piece in the order of
//               their numbers, cross none, and lie on whole steps of the ruler; the film is
//               turned no more often, and what comes off the roll is no longer, than was asked;
//               where the order of laying is a rule, each strip off a roll holds what is laid next
//   measured    a roll's length ends with its last piece; the bound is not above the new film nor
//               below the pieces' area over the usable width
#pragma once

#include "model/plan.hpp"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace pelt::verify {

/// A plan when nothing is wrong, else one sentence for everything that is.
struct Verdict {
    std::optional<Plan> plan;
    std::vector<std::string> faults;
};

/// Runs every check above.
Verdict verify(std::shared_ptr<const Job> job, Layout layout);

} // namespace pelt::verify
