// SPDX-License-Identifier: MIT
// What reading a vehicle and reading a film have in common. Inside read/ only.
#pragma once

#include "read/context.hpp"
#include "read/fields.hpp"
#include "read/kind.hpp"
#include "read/read.hpp"
#include "read/yaml.hpp"

#include <functional>
#include <memory>
#include <optional>
#include <utility>

namespace pelt::read {

/// Parses the source and tells a file of another kind. Without a result `context` has the reason.
std::optional<Node> root_of(const std::shared_ptr<const Source>& source, FileKind wanted,
                            Context& context);

/// Margins to grip: one figure, or what is wanted and what is the least. None when not given.
std::optional<Handling> read_handling(const Fields& allowances, Context& context);

/// A file read by `read`, or its faults in the order of their places.
template <class T>
Reading<T> read_file(const std::shared_ptr<const Source>& source, FileKind kind,
                     const std::function<T(const Node&, Context&)>& read) {
    Reading<T> out;
    Context context;
    std::optional<T> made;
    if (const std::optional<Node> root = root_of(source, kind, context))
        made = read(*root, context);
    const bool wrong = context.told_since(0);
    std::move(context).finish(out.faults, out.unlisted);
    if (made && !wrong) {
        made->file = source->name;
        out.value = std::move(made);
    }
    return out;
}

} // namespace pelt::read
