// SPDX-License-Identifier: MIT
// One value of a file, read as its key says: kind, bounds, and a sentence when it is not so.
// Inside read/ only. Without a result the fault has been told.
#pragma once

#include "model/polygon.hpp"
#include "read/context.hpp"
#include "read/keys.hpp"
#include "read/quantities.hpp"
#include "read/yaml.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace pelt::read {

/// The parsed value; what was refused is told.
template <class T>
std::optional<T> told(const Parsed<T>& parsed, const Node& node, std::string_view label,
                      Context& context) {
    if (!parsed.value)
        context.fault(node.place, std::string(label) + " " + parsed.refusal.what,
                      parsed.refusal.remedy);
    return parsed.value;
}

/// The text of a value that must be one; `label` names it in the sentence, `owner` is the place of
/// its key, for values that are empty.
const std::string* plain_text(const Node& node, std::string_view label, const Place& owner,
                              Context& context);

std::optional<WrittenLength> length_value(const Node& node, const Key& key, std::string_view label,
                                          const Place& owner, Context& context);
std::optional<double> percent_value(const Node& node, const Key& key, std::string_view label,
                                    const Place& owner, Context& context);
std::optional<double> number_value(const Node& node, const Key& key, std::string_view label,
                                   const Place& owner, Context& context);
std::optional<std::int64_t> count_value(const Node& node, const Key& key, std::string_view label,
                                        const Place& owner, Context& context);
std::optional<WrittenMoney> money_value(const Node& node, const Key& key, std::string_view label,
                                        const Place& owner, Context& context);

/// Whether a plain value is meant for a length and not for a word or a map's first key.
bool begins_like_a_length(std::string_view text);

/// A line of text: not empty, no control characters, no blanks around it, 200 characters at most.
std::optional<std::string> text_value(const Node& node, std::string_view label, const Place& owner,
                                      Context& context);

/// A text that also holds none of / , = so that options can list it.
std::optional<std::string> name_value(const Node& node, std::string_view label, const Place& owner,
                                      Context& context);

/// Tells what is wrong with a name that stands as a key. True when nothing is.
bool check_name(const std::string& name, std::string_view label, const Place& place,
                Context& context);

/// A point [x, y] in millimetres.
std::optional<Point> point_value(const Node& node, const Key& key, std::string_view label,
                                 const Place& owner, Context& context);

/// A size along x and y in millimetres: [x, y], or x × y as in `1380 x 850` and `54 x 33 1/2 in`,
/// where a unit behind both is that of both.
std::optional<Point> size_value(const Node& node, const Key& key, std::string_view label,
                                const Place& owner, Context& context);

/// The low and the high corner of a rectangle that two of its corners span.
struct Corners {
    Point low;
    Point high;
};
std::optional<Corners> corners_value(const Node& node, const Key& key, std::string_view label,
                                     const Place& owner, Context& context);

/// "1 m", "0.1 mm": a bound as people write it.
std::string spoken_length(double mm);

} // namespace pelt::read
