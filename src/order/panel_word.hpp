// SPDX-License-Identifier: MIT
// The words by which options name panels, and what they select. Inside order/ only.
#pragma once

#include "model/plan.hpp"

#include <optional>
#include <string>
#include <vector>

namespace pelt::order {

/// "side wall/left/no 2/1": what stands behind the name may be left out.
struct PanelWord {
    std::string name; ///< of a panel or a group
    std::optional<Side> side;
    int no = LeftOut::all;
    int piece = LeftOut::all;
    bool is_name_only() const { return !side && no == LeftOut::all && piece == LeftOut::all; }
};

/// None: what stands behind the name is none of these, in this order.
std::optional<PanelWord> panel_word(const std::string& word);

/// "front bumper/1", as options name it.
std::string written(const PanelWord& word);

/// One side of one panel of one vehicle.
struct Candidate {
    LeftOut place;
    const Vehicle* vehicle;
    const Panel* panel;
};
std::vector<Candidate> candidates_in(const std::vector<Vehicle>& vehicles);

/// Which of those that are alike and which piece of a divided panel is asked about: any other than
/// the words name, where nothing is known of how many there are.
struct WhichPiece {
    static constexpr int other = -2;
    int no = other;
    int piece = other;
};

/// Whether the word calls the panel by its name.
bool names(const PanelWord& word, const Candidate& candidate, const WhichPiece& which);
/// The same, or it is the panel's group, and no panel of the vehicle is called so.
bool selects(const PanelWord& word, const Candidate& candidate, const WhichPiece& which);

} // namespace pelt::order
