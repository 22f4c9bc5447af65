// SPDX-License-Identifier: MIT
#include "read/documents.hpp"

#include <algorithm>
#include <string>
#include <string_view>
#include <utility>

namespace pelt::read {
namespace {

struct Part {
    std::string_view text;
    int lines_before = 0;
};

bool divides(std::string_view line) {
    return line.starts_with("---") && line.find_first_not_of(" \t\r", 3) == std::string_view::npos;
}

bool is_remarks(std::string_view text) {
    while (!text.empty()) {
        const std::string_view line = text.substr(0, text.find('\n'));
        text.remove_prefix(std::min(text.size(), line.size() + 1));
        const std::size_t first = line.find_first_not_of(" \t\r");
        if (first != std::string_view::npos && line[first] != '#')
            return false;
    }
    return true;
}

std::vector<Part> parts_of(std::string_view text) {
    std::vector<Part> parts(1);
    std::size_t begin = 0;
    int line_number = 0;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find('\n', at), text.size());
        ++line_number;
        if (divides(text.substr(at, end - at))) {
            parts.back().text = text.substr(begin, at - begin);
            begin = std::min(end + 1, text.size());
            parts.push_back({{}, line_number});
        }
        at = end + 1;
    }
    parts.back().text = text.substr(begin);
    if (parts.size() > 1 && is_remarks(parts.front().text))
        parts.erase(parts.begin());
    if (parts.size() > 1 && is_remarks(parts.back().text))
        parts.pop_back();
    return parts;
}

/// Places of a part become places of the whole.
class Shift {
public:
    Shift(std::shared_ptr<const Source> whole, int lines)
        : whole_(std::move(whole)), lines_(lines) {}

    void place(Place& place) const {
        place.source = whole_;
        if (place.line > 0)
            place.line += lines_;
    }
    void node(Node& node) const { // no deeper than the parser allows
        place(node.place);
        for (Node& item : node.items)
            this->node(item);
        for (Entry& entry : node.entries) {
            place(entry.place);
            this->node(entry.value);
        }
    }

private:
    std::shared_ptr<const Source> whole_;
    int lines_;
};

} // namespace

std::vector<Document> documents_of(const std::shared_ptr<const Source>& source) {
    std::vector<Document> out;
    for (const Part& part : parts_of(source->text)) {
        auto alone = std::make_shared<Source>();
        alone->name = source->name;
        alone->text = part.text;
        Document made;
        made.root = parse(alone, made.faults);
        const Shift shift(source, part.lines_before);
        if (made.root)
            shift.node(*made.root);
        for (Fault& fault : made.faults)
            shift.place(fault.place);
        out.push_back(std::move(made));
    }
    return out;
}

} // namespace pelt::read
