// SPDX-License-Identifier: MIT
#include "read/kind.hpp"

#include "read/context.hpp"
#include "read/quantities.hpp"
#include "read/suggest.hpp"
#include "read/table/layout.hpp"
#include "read/yaml.hpp"

#include <algorithm>
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
    if (root.entry("job") != nullptr)
        return FileKind::jobs; // it names its vehicle and its film
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

/// A file of jobs may be one job a document, and then names vehicles and films too.
bool is_job_document(std::string_view line) {
    return line.starts_with("job:");
}

bool begins_with_key(std::string_view line, FileKind kind) {
    const std::string_view name = name_of(kind);
    return line.substr(0, name.size()) == name && line.substr(name.size(), 1) == ":";
}

/// The kind of a file whose first line that is no remark is 'KIND: …', where no other line could be
/// such a key: it then is one, whatever follows, and parsing the file can be left to its reader.
std::optional<FileKind> plainly_told(std::string_view text) {
    std::optional<FileKind> found;
    while (!text.empty()) {
        const std::string_view line = text.substr(0, text.find('\n'));
        text.remove_prefix(std::min(text.size(), line.size() + 1));
        if (line.empty() || line[0] == '#' || line[0] == ' ' || (!found && line == "---"))
            continue;
        if (!found && is_job_document(line))
            return FileKind::jobs;
        const auto kind = std::find_if(kinds.begin(), kinds.end(),
                                       [&](FileKind k) { return begins_with_key(line, k); });
        const bool is_key = kind != kinds.end();
        if (found ? is_key || line[0] == '"' || line[0] == '\'' || line[0] == '?'
                  : !is_key || !works(*kind))
            return std::nullopt;
        if (!found)
            found = *kind;
    }
    return found;
}

bool has_heading(const Layout& layout, std::string_view heading) {
    const Row& row = layout.cells.rows[layout.heading_row];
    return std::any_of(row.begin(), row.end(),
                       [&](const std::string& cell) { return plain_heading(cell) == heading; });
}

/// A table of panels is a vehicle, one of jobs a file of jobs; a log is neither.
std::optional<FileKind> kind_of_table(const std::shared_ptr<const Source>& source,
                                      Context& context) {
    if (const Layout panels = layout_of(source->text); panels.has_headings()) {
        if (!has_heading(panels, "pieces") || !has_heading(panels, "spoiled"))
            return FileKind::vehicle;
        context.fault({source, static_cast<int>(panels.heading_row) + 1, 1}, "this is a shop's log",
                      "check the shop file that names it under 'log'");
        return std::nullopt;
    }
    return layout_of(source->text, "job").has_headings() ? FileKind::jobs : FileKind::vehicle;
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

bool works(FileKind) {
    return true;
}

Reading<FileKind> kind_of(std::shared_ptr<const Source> source) {
    Reading<FileKind> out;
    Context context;
    out.value = source->is_table ? kind_of_table(source, context) : plainly_told(source->text);
    if (out.value || source->is_table) {
        std::move(context).finish(out.faults, out.unlisted);
        return out;
    }
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
