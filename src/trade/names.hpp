// SPDX-License-Identifier: MIT
// The names of panels: what a panel is and how it lies, by the whole words of its name. All other
// facts of the trade about a panel hang on these two, never on its name.
#pragma once

#include "model/panel_name.hpp"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace pelt::trade {

/// One kind of panel: the word that is printed for it and the others that files may use.
struct PanelName {
    PanelKind kind;
    std::string_view word;
    std::optional<LiesOn> lies = std::nullopt; ///< none: it comes on more than one face
    std::string_view others = {};              ///< "rear quarter | quarter panel"
};

/// A name that could be two things, with the words that settle it.
struct AmbiguousName {
    std::string_view names;    ///< "side skirt | skirt"
    std::string_view could_be; ///< "sill | truck skirt"
};

/// What a name tells.
struct Named {
    std::optional<PanelKind> is;       ///< none: not known, or it could be several things
    std::optional<LiesOn> lies;        ///< as the table has it
    std::optional<LiesOn> by_its_word; ///< by "front", "rear" or "side" beside what it is
    std::vector<std::string> could_be; ///< words of the kinds that an ambiguous name could mean
};

/// In the order of PanelKind.
std::span<const PanelName> panel_names();
std::span<const AmbiguousName> ambiguous_names();

std::string_view word_of(PanelKind kind);

/// Words are compared whole, without case, in the singular or the plural; hyphens and underscores
/// are blanks; "left", "upper" and their like and numbers are set aside. Words of place ("front",
/// "cab") may stand before or behind what is known; any other word more makes the name unknown. Of
/// the names that fit, the one that ends last counts (a door handle is a handle), and of those the
/// longest.
Named named(std::string_view name);

/// Whether it is flat, or bent one way alone: film lies on it without stretch, so that nothing is to
/// be measured. Common practice, no source.
bool is_flat(PanelKind kind);

/// Whether hardware of this name is badges, which are stuck back on.
bool is_badge(std::string_view hardware);

} // namespace pelt::trade
