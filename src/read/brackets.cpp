// SPDX-License-Identifier: MIT
#include "read/brackets.hpp"

#include <vector>

namespace pelt::read {
namespace {

bool is_blank(char c) {
    return c == ' ' || c == '\t' || c == '\r' || c == '\n';
}

bool is_bracket(char c) {
    return c == '[' || c == ']' || c == '{' || c == '}';
}

class Scan {
public:
    explicit Scan(std::string_view text) : text_(text) {}

    std::optional<Unpaired> run() {
        while (at_ < text_.size())
            if (const auto unpaired = token())
                return unpaired;
        if (open_.empty())
            return std::nullopt;
        return Unpaired{Unpaired::Kind::open_bracket, open_.front(), 0};
    }

private:
    char look(std::size_t ahead) const {
        return at_ + ahead < text_.size() ? text_[at_ + ahead] : '\n';
    }

    std::optional<Unpaired> token() {
        const char c = look(0);
        if (is_blank(c) || (c == ',' && !open_.empty()) ||
            ((c == '-' || c == '?' || c == ':') && is_blank(look(1))))
            ++at_;
        else if (c == '#')
            at_ = std::min(text_.find('\n', at_), text_.size());
        else if (c == '"' || c == '\'')
            return quote(c);
        else if (c == '[' || c == '{')
            open_.push_back(at_++);
        else if (c == ']' || c == '}')
            return closing(c);
        else
            plain();
        return std::nullopt;
    }

    /// Quoted texts end on their line: anything else is refused elsewhere, and would hide the slip.
    std::optional<Unpaired> quote(char mark) {
        const std::size_t opened = at_++;
        while (at_ < text_.size() && text_[at_] != '\n') {
            const bool doubled = mark == '\'' && look(0) == mark && look(1) == mark;
            const bool escaped = mark == '"' && look(0) == '\\' && look(1) != '\n';
            if (!doubled && look(0) == mark) {
                ++at_;
                return std::nullopt;
            }
            at_ += doubled || escaped ? 2 : 1;
        }
        return Unpaired{Unpaired::Kind::open_quote, opened, 0};
    }

    std::optional<Unpaired> closing(char c) {
        if (open_.empty())
            return Unpaired{Unpaired::Kind::stray_closing, at_, 0};
        if (text_[open_.back()] != (c == ']' ? '[' : '{'))
            return Unpaired{Unpaired::Kind::wrong_closing, at_, open_.back()};
        open_.pop_back();
        ++at_;
        return std::nullopt;
    }

    /// Whatever it begins with belongs to it: `{:[` begins with a colon that ends nothing.
    void plain() {
        for (++at_; at_ < text_.size() && text_[at_] != '\n'; ++at_) {
            const char c = look(0);
            const char next = look(1);
            const bool in_flow = !open_.empty();
            if (in_flow && (c == ',' || is_bracket(c)))
                return;
            if (c == ':' && (is_blank(next) || (in_flow && (next == ',' || is_bracket(next)))))
                return;
            if (c == ' ' && next == '#')
                return;
        }
    }

    std::string_view text_;
    std::size_t at_ = 0;
    std::vector<std::size_t> open_;
};

} // namespace

std::optional<Unpaired> find_unpaired(std::string_view text) {
    return Scan(text).run();
}

} // namespace pelt::read
