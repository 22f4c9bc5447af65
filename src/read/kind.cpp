// SPDX-License-Identifier: MIT
#include "read/kind.hpp"

#include "read/file.hpp"

#include <array>
#include <string>
#include <utility>

namespace pelt::read {
namespace {

struct Named {
    std::string_view key;
    std::optional<FileKind> kind; ///< none: a kind that is not known yet
};

/// The key that a file of each kind has at its top.
constexpr std::array<Named, 5> kinds{{{"vehicle", FileKind::vehicle},
                                      {"film", FileKind::film},
                                      {"stock", std::nullopt},
                                      {"shop", std::nullopt},
                                      {"jobs", std::nullopt}}};

std::string a_kind(FileKind kind) {
    return kind == FileKind::vehicle ? "a vehicle" : "a film";
}

std::optional<FileKind> kind_of_root(const Node& root, Context& context) {
    if (root.kind == Node::Kind::refused)
        return std::nullopt;
    std::vector<const Named*> found;
    for (const Named& named : kinds)
        if (root.find(named.key) != nullptr)
            found.push_back(&named);
    if (found.empty()) {
        context.fault(root.place, "this names neither a vehicle nor a film",
                      "begin with 'vehicle: NAME' or 'film: NAME'");
        return std::nullopt;
    }
    if (found.size() > 1) {
        context.fault(root.place,
                      "this names both '" + std::string(found[0]->key) + "' and '" +
                          std::string(found[1]->key) + "'",
                      "keep them in a file each");
        return std::nullopt;
    }
    if (!found[0]->kind)
        context.fault(root.place, "a file of '" + std::string(found[0]->key) + "' is not known yet",
                      "a later version will read it");
    return found[0]->kind;
}

} // namespace

std::optional<Node> root_of(const std::shared_ptr<const Source>& source, FileKind wanted,
                            Context& context) {
    Faults faults;
    std::optional<Node> root = parse(source, faults);
    context.add(std::move(faults));
    if (!root)
        return std::nullopt;
    const std::optional<FileKind> kind = kind_of_root(*root, context);
    if (!kind)
        return std::nullopt;
    if (*kind == wanted)
        return root;
    context.fault(root->place,
                  "this file describes " + a_kind(*kind) + " where " + a_kind(wanted) +
                      " is expected",
                  "on the command line vehicles come first and the film last");
    return std::nullopt;
}

Reading<FileKind> kind_of(std::shared_ptr<const Source> source) {
    Reading<FileKind> out;
    Context context;
    Faults faults;
    const std::optional<Node> root = parse(source, faults);
    context.add(std::move(faults));
    if (root)
        out.value = kind_of_root(*root, context);
    // What else is wrong with the file is told by whoever reads it as that kind.
    if (out.value)
        return out;
    std::move(context).finish(out.faults, out.unlisted);
    return out;
}

} // namespace pelt::read
