// SPDX-License-Identifier: MIT
#include "model/limits.hpp"
#include "read/bytes_of_file.hpp"
#include "read/log.hpp"
#include "read/quantities.hpp"
#include "read/stays_inside.hpp"
#include "read/text_check.hpp"

#include <filesystem>
#include <utility>

namespace pelt::read {
std::shared_ptr<const Log> log_named(const Entry& entry, const std::string& file,
                                     Context& context) {
    const std::string name = "the log " + read::quoted(file);
    if (!stays_inside(file)) {
        context.fault(entry.value.place, name + " is not in the shop file's folder",
                      "put it beside the shop file, or in a folder below");
        return nullptr;
    }
    const std::string& owner = entry.place.source->name;
    BytesRead got = bytes_beside(owner, file, limit::file_bytes,
                                 {"the shop file", "give a CSV file", "begin a new one"});
    if (got.file)
        context.files.push_back(*got.file);
    if (!got.bytes) {
        context.add({{got.not_opened ? Severity::access : Severity::file, entry.value.place, "",
                      name + " " + got.what, got.remedy}});
        return nullptr;
    }
    auto source = std::make_shared<Source>();
    source->name =
        owner == "-" ? file : (std::filesystem::path(owner).parent_path() / file).string();
    source->is_table = true;
    source->text = *std::move(got.bytes);
    const std::size_t before = context.mark();
    Log log = log_of(source, context);
    return context.told_since(before) ? nullptr : std::make_shared<const Log>(std::move(log));
}

} // namespace pelt::read
