// SPDX-License-Identifier: MIT
#include "read/kind.hpp"

#include "read/context.hpp"
#include "read/quantities.hpp"
#include "read/suggest.hpp"
#include "read/yaml.hpp"

#include <array>
#include <string>
#include <vector>

namespace pelt::read {
namespace {

constexpr std::array<FileKind, 5> kinds{FileKind::vehicle, FileKind::film, FileKind::stock,
                                        FileKind::shop, FileKind::jobs};

/// A slip in the word itself is likelier than a file of no kind.
void tell_no_kind(const Node& root, Context& context) {
    const std::vector<std::string> words{"vehicle", "film"};
    for (const Entry& entry : root.entries)
        if (const std::string near = nearest(entry.key, words); !near.empty()) {
            context.fault(entry.place,
                          "the file names neither a vehicle nor a film, but has " +
                              quoted(entry.key),
                          "did you mean " + quoted(near) + "?");
            return;
        }
    context.fault(root.place, "the file names neither a vehicle nor a film",
                  "begin it with 'vehicle: NAME' or 'film: NAME'");
}

std::optional<FileKind> told_kind(const Node& root, Context& context) {
    std::optional<FileKind> found;
    for (const FileKind kind : kinds) {
        const Entry* entry = root.entry(name_of(kind));
        if (entry == nullptr)
            continue;
        if (found) {
            context.fault(entry->place,
                          "the file has both " + quoted(name_of(*found)) + " and " +
                              quoted(name_of(kind)),
                          "put each into a file of its own");
            return std::nullopt;
        }
        if (!works(kind)) {
            context.fault(entry->place, quoted(entry->key) + " files are not known yet",
                          "a later version will read them");
            return std::nullopt;
        }
        found = kind;
    }
    if (!found && root.kind != Node::Kind::refused)
        tell_no_kind(root, context);
    return found;
}

} // namespace

std::string_view name_of(FileKind kind) {
    switch (kind) {
    case FileKind::vehicle:
        return "vehicle";
    case FileKind::film:
        return "film";
    case FileKind::stock:
        return "stock";
    case FileKind::shop:
        return "shop";
    case FileKind::jobs:
        return "jobs";
    }
    return "vehicle";
}

bool works(FileKind kind) {
    return kind == FileKind::vehicle || kind == FileKind::film || kind == FileKind::stock;
}

Reading<FileKind> kind_of(std::shared_ptr<const Source> source) {
    Reading<FileKind> out;
    Context context;
    Context unheard;
    Faults faults;
    std::optional<Node> root = parse(source, faults);
    if (root && !stops(faults))
        out.value = told_kind(*root, context);
    else if (root) // whoever reads the file tells its faults; without a kind nobody does
        out.value = told_kind(*root, unheard);
    if (!out.value && stops(faults))
        context.add(std::move(faults));
    std::move(context).finish(out.faults, out.unlisted);
    return out;
}

} // namespace pelt::read
