// SPDX-License-Identifier: MIT
// A map of a file with the keys that the table knows for it. Inside read/ only.
#pragma once

#include "read/context.hpp"
#include "read/keys.hpp"
#include "read/values.hpp"
#include "read/yaml.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace pelt::read {

/// Reads the keys of one map. Every reader gives nothing for a key that is absent or wrong; what is
/// wrong has been told then.
class Fields {
public:
    /// `label` names the map in sentences ("'roll'", "panel 'hood'"), `owner` is the place of its
    /// key. Tells a value that is no map, keys that are not known, or not known yet, and required
    /// ones that are missing.
    Fields(const Node& node, In map, std::string label, const Place& owner, Context& context);

    const Place& owner() const { return owner_; }
    const std::string& label() const { return label_; }
    bool is_map() const { return is_map_; }

    /// The entry of a key that works; none also where it was refused.
    const Entry* entry(std::string_view name) const;
    bool has(std::string_view name) const { return entry(name) != nullptr; }
    /// True also for a key that was refused, or that a misspelt one was likely meant to be.
    bool mentions(std::string_view name) const;

    std::optional<std::string> text(std::string_view name) const;
    std::optional<std::string> name(std::string_view name) const;
    std::vector<std::string> names(std::string_view name) const;
    /// Names that options would take, a panel's side behind a slash.
    std::vector<std::string> names_with_sides(std::string_view name) const;
    std::optional<bool> yes_no(std::string_view name) const;
    /// The position of the word that was chosen in choices_of(key).
    std::optional<std::size_t> choice(std::string_view name) const;
    std::optional<int> count(std::string_view name) const;
    std::optional<double> number(std::string_view name) const;
    std::optional<WrittenLength> length(std::string_view name) const;
    std::optional<Um> ceil_um(std::string_view name) const;
    std::optional<double> mm(std::string_view name) const;
    std::optional<double> percent(std::string_view name) const;
    std::optional<WrittenMoney> money(std::string_view name) const;
    std::optional<Point> point(std::string_view name) const;
    std::optional<Point> size(std::string_view name) const;
    std::optional<Corners> corners(std::string_view name) const;

    /// The value of a key as a map with keys of its own.
    std::optional<Fields> map(std::string_view name) const;
    /// The items of a list, told when it is none.
    const std::vector<Node>* list(std::string_view name) const;
    /// The entries of a map from names to maps, told when it is none.
    const std::vector<Entry>* named(std::string_view name) const;

private:
    const Key& key(std::string_view name) const;
    void check_keys();
    void tell_both_words();
    void tell_unknown(const Entry& entry);
    bool tell_no_map() const;
    void tell_not(const Entry* e, std::string_view what, std::string_view name) const;
    bool few_enough(const Entry& entry, std::size_t entries) const;

    const Node* node_;
    In map_;
    std::string label_;
    Place owner_;
    Context* context_;
    bool is_map_ = false;
    std::vector<std::string> guessed_; ///< what unknown keys were likely meant to be
};

} // namespace pelt::read
