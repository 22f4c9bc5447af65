// SPDX-License-Identifier: MIT
#include "report/document.hpp"

#include "model/utf8.hpp"

#include <algorithm>
#include <array>
#include <string_view>
#include <utility>

namespace pelt::report {
namespace {

std::string lines_with_mark(const std::string& mark, const std::string& text, int width) {
    const int indent = display_width(mark);
    std::string out;
    for (const std::string& line : wrapped_lines(text, width - indent))
        out +=
            (out.empty() ? mark : std::string(static_cast<std::size_t>(indent), ' ')) + line + "\n";
    return out;
}

class TextWriter {
public:
    explicit TextWriter(const TextStyle& style)
        : style_(style), width_(std::clamp(style.width, 60, 120)) {}

    std::string operator()(const Title& title) const {
        const int room = width_ - display_width(title.right) - 2;
        if (title.right.empty() || display_width(title.text) > room)
            return (title.right.empty() ? "" : title.right + "\n") +
                   lines_with_mark("", title.text, width_);
        const int gap = width_ - display_width(title.text) - display_width(title.right);
        return title.text + std::string(static_cast<std::size_t>(gap), ' ') + title.right + "\n";
    }
    std::string operator()(const Heading& heading) const { return "\n" + heading.text + "\n"; }
    std::string operator()(const Big& big) const {
        std::string lines;
        int widest = 0;
        for (const std::string& text : big.texts) {
            lines += lines_with_mark("  ", text, width_);
            widest = std::max(widest, std::min(display_width(text), width_ - 2));
        }
        const std::string rule = "  " + std::string(static_cast<std::size_t>(widest), '=') + "\n";
        return rule + lines + rule;
    }
    std::string operator()(const Line& line) const {
        return lines_with_mark("", line.text, width_);
    }
    std::string operator()(const Items& items) const {
        std::string out;
        for (const std::string& text : items.texts)
            out += lines_with_mark("  " + items.mark + " ", text, width_);
        return out;
    }
    std::string operator()(const Table& table) const { return table_text(table, width_); }
    std::string operator()(const RollSketch& roll) const {
        return style_.on_a_terminal ? roll_text(roll, style_) : "";
    }

private:
    const TextStyle& style_;
    int width_;
};

// Text that a Markdown reader must not take for markup.
std::string plain(const std::string& text) {
    std::string out;
    for (const char c : text) {
        if (std::string_view("\\`*_[]<>#~&").find(c) != std::string_view::npos)
            out += '\\';
        out += c;
    }
    return out;
}

Table plain(Table table) {
    for (Column& column : table.columns)
        column.head = plain(column.head);
    for (auto& row : table.rows)
        for (std::string& cell : row)
            cell = plain(cell);
    return table;
}

struct MarkdownWriter {
    std::string operator()(const Title& title) const {
        return "# " + plain(title.text) + "\n" +
               (title.right.empty() ? "" : "\n**" + plain(title.right) + "**\n");
    }
    std::string operator()(const Heading& heading) const {
        return "\n## " + plain(heading.text) + "\n\n";
    }
    std::string operator()(const Big& big) const {
        std::string out;
        for (const std::string& text : big.texts)
            out += "**" + plain(text) + "**\n\n";
        return out;
    }
    std::string operator()(const Line& line) const { return "\n" + plain(line.text) + "\n"; }
    std::string operator()(const Items& items) const {
        std::string out;
        for (const std::string& text : items.texts)
            out += items.mark == "!" ? "- **!** " + plain(text) + "\n" : "- " + plain(text) + "\n";
        return out;
    }
    std::string operator()(const Table& table) const { return table_markdown(plain(table)); }
    std::string operator()(const RollSketch&) const { return {}; }
};

// Only signs that this program prints itself; each takes as many columns as what stands for it.
constexpr std::array<std::pair<std::string_view, std::string_view>, 10> spelt{{{"×", "x"},
                                                                               {"²", "2"},
                                                                               {"·", "|"},
                                                                               {"–", "-"},
                                                                               {"≥", ">"},
                                                                               {"≤", "<"},
                                                                               {"→", ">"},
                                                                               {"←", "<"},
                                                                               {"↑", "^"},
                                                                               {"↓", "v"}}};

std::string in_ascii(std::string text) {
    for (const auto& [sign, spelling] : spelt)
        for (std::size_t at = text.find(sign); at != std::string::npos; at = text.find(sign, at))
            text.replace(at, sign.size(), spelling);
    return text;
}

} // namespace

std::string to_text(const Document& document, const TextStyle& style) {
    const TextWriter writer(style);
    std::string text;
    for (const Block& block : document)
        text += std::visit(writer, block);
    return style.ascii ? in_ascii(std::move(text)) : text;
}

std::string to_markdown(const Document& document) {
    std::string text;
    for (const Block& block : document)
        text += std::visit(MarkdownWriter{}, block);
    return text;
}

} // namespace pelt::report
