// SPDX-License-Identifier: MIT
#include "read/names.hpp"

#include "read/quantities.hpp"
#include "read/suggest.hpp"

namespace pelt::read {

void check_reference(const std::string& name, std::string_view label, const Place& place,
                     const Names& names, Context& context) {
    if (name.empty() || !names.known || names.known->count(name) > 0)
        return;
    if (context.full()) {
        context.fault(place, {});
        return;
    }
    const auto [remedy, is_new] = context.remedies.try_emplace(names.sort + ":" + name);
    if (is_new)
        remedy->second =
            names.known->empty()
                ? "list it under '" + names.sort + "'"
                : did_you_mean(name, {names.known->begin(), names.known->end()}, "it has", context);
    context.fault(place,
                  std::string(label) + ": the file has no " + names.sort + " " + quoted(name),
                  remedy->second);
}

} // namespace pelt::read
