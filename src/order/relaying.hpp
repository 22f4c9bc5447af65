// SPDX-License-Identifier: MIT
// Layouts put together from others, and what lies where in them. Inside order/ only.
#pragma once

#include "order/fill.hpp"

#include <optional>

namespace pelt::order {

bool any(const Copies& copies);
std::size_t count_of(const Copies& copies);

bool takes_new_film(const Job& job, const Layout& layout);

/// The copies that lie on new rolls, or on stock.
Copies copies_on(const Job& job, const Layout& layout, bool is_new);

/// True when new film holds pieces that must be of one batch.
bool new_film_must_match(const Job& job, const Layout& layout);

/// What lies on stock; nothing is proved of it.
Layout on_stock_alone(const Job& job, Layout layout);

/// Both, on rolls of their own; none where one of them is none.
std::optional<Layout> joined(std::optional<Layout> one, std::optional<Layout> other);

/// The search takes as little new film as it can and lies on stock as it likes: what lies there is
/// laid anew.
Layout tightened(const Job& job, Layout layout, const nest::Effort& effort,
                 const nest::Watch& watch);

/// A layout of a quick look, laid with all effort: new film, stock that holds what must be of one
/// batch and stock that costs something each by themselves, every copy staying with its part.
Layout laid_with_effort(const Job& job, Layout layout, const std::vector<CostOfLength>& costs,
                        const SpareToBuy& spare, const nest::Effort& effort,
                        const nest::Watch& watch);

} // namespace pelt::order
