// SPDX-License-Identifier: MIT
#include "read/yaml.hpp"

#include "model/limits.hpp"
#include "read/another_kind.hpp"
#include "read/syntax.hpp"
#include "read/text_check.hpp"
#include "read/yaml_rules.hpp"

#include <yaml-cpp/eventhandler.h>
#include <yaml-cpp/exceptions.h>
#include <yaml-cpp/mark.h>
#include <yaml-cpp/parser.h>

#include <algorithm>
#include <sstream>

namespace pelt::read {
namespace {

using SourceFile = std::shared_ptr<const Source>;

/// Leaves the parser: the fault has been told, and going on would only mislead.
struct Stop {};

std::size_t byte_of(const YAML::Mark& mark) {
    return mark.pos < 0 ? 0 : static_cast<std::size_t>(mark.pos);
}

/// Builds the tree from yaml-cpp's events, which carry the place of everything.
class TreeBuilder : public YAML::EventHandler {
public:
    TreeBuilder(const SourceFile& source, Faults& faults)
        : source_(source), text_(source->text), faults_(faults), cursor_(source) {}

    /// Complete documents only: texts that run over their line are a symptom where syntax fails.
    std::optional<Node> take() {
        faults_.insert(faults_.end(), run_over_.begin(), run_over_.end());
        return std::move(root_);
    }

    void OnDocumentStart(const YAML::Mark&) override {}
    void OnDocumentEnd() override {}

    void OnNull(const YAML::Mark& mark, YAML::anchor_t anchor) override {
        // The mark of an empty value points at what follows, except between brackets.
        Node made;
        if (!open_.empty())
            made.place = open_.back().key ? open_.back().key->place : open_.back().node.place;
        if (open_.empty() || (open_.back().flow && !open_.back().key))
            made.place = cursor_.at(byte_of(mark));
        refuse_anchor(made, anchor);
        add(std::move(made));
    }

    void OnAlias(const YAML::Mark& mark, YAML::anchor_t) override {
        Node made = node(Node::Kind::refused, mark);
        refuse(made, "aliases (*) are not read", "write the value itself");
        add(std::move(made));
    }

    void OnScalar(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                  const std::string& value) override {
        Node made = node(Node::Kind::scalar, mark);
        made.text = value;
        const std::size_t byte = byte_of(mark);
        scalar_byte_ = byte;
        const char first = byte < text_.size() ? text_[byte] : '\0';
        made.quoted = first == '"' || first == '\'';
        refuse_anchor(made, anchor);
        refuse_tag(made, tag, first);
        if (made.quoted)
            must_close(made, byte);
        else if (made.kind == Node::Kind::scalar && (first == '|' || first == '>'))
            refuse(made, "texts of several lines (| and >) are not read", "write it on one line");
        else if (made.kind == Node::Kind::scalar && text_.compare(byte, value.size(), value) != 0)
            refuse_run_over(made);
        add(std::move(made));
    }

    void OnSequenceStart(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                         YAML::EmitterStyle::value style) override {
        open(Node::Kind::list, mark, tag, anchor, style);
    }
    void OnSequenceEnd() override {
        const std::vector<Node>& items = open_.back().node.items;
        const auto is_text = [](const Node& item) { return item.kind == Node::Kind::scalar; };
        if (items.size() == 2 && std::all_of(items.begin(), items.end(), is_text))
            ++points_;
        if (points_ > limit::points)
            stop(open_.back().node.place,
                 "the file holds more than " + limit::in_groups(limit::points) + " points",
                 "leave out points that lie closer than a millimeter");
        close();
    }
    void OnMapStart(const YAML::Mark& mark, const std::string& tag, YAML::anchor_t anchor,
                    YAML::EmitterStyle::value style) override {
        open(Node::Kind::map, mark, tag, anchor, style);
    }
    void OnMapEnd() override {
        drop_repeated_keys(open_.back().node, faults_);
        close();
    }

private:
    struct Open {
        Node node;
        std::optional<Node> key;
        bool flow = false;
        bool refused = false;
    };

    void tell(const Place& place, std::string what, std::string remedy) {
        faults_.push_back({Severity::file, place, "", std::move(what), std::move(remedy)});
    }
    [[noreturn]] void stop(const Place& place, std::string what, std::string remedy) {
        tell(place, std::move(what), std::move(remedy));
        throw Stop{};
    }
    void refuse(Node& made, std::string what, std::string remedy) {
        tell(made.place, std::move(what), std::move(remedy));
        made.kind = Node::Kind::refused;
    }

    void refuse_anchor(Node& made, YAML::anchor_t anchor) {
        if (anchor != 0)
            refuse(made, "anchors (&) are not read", "take the & and its name out");
    }
    void refuse_tag(Node& made, const std::string& tag, char first) {
        const bool usual = tag.empty() || tag == "?" || (tag == "!" && first != '!');
        if (!usual && made.kind != Node::Kind::refused)
            refuse(made, "tags (!) are not read", "take the ! and its name out");
    }
    void refuse_run_over(Node& made) {
        made.kind = Node::Kind::refused;
        run_over_.push_back({Severity::file, made.place, "",
                             "this text runs on over the end of its line",
                             "write it on one line; a line below may be indented too far"});
    }

    /// An unclosed quote swallows what follows without a complaint from the parser.
    void must_close(const Node& made, std::size_t byte) {
        if (!closes_on_its_line(text_, byte))
            stop(made.place, "the quote opened here is not closed on its line",
                 std::string("close it with ") + text_[byte]);
    }

    Node node(Node::Kind kind, const YAML::Mark& mark) {
        Node made;
        made.kind = kind;
        made.place = cursor_.at(byte_of(mark));
        if (++nodes_ > limit::values)
            stop(made.place, "the file holds more than a million values",
                 "leave out points that lie closer than a millimeter");
        return made;
    }

    void open(Node::Kind kind, const YAML::Mark& mark, const std::string& tag,
              YAML::anchor_t anchor, YAML::EmitterStyle::value style) {
        Node made = node(kind, mark);
        if (open_.size() >= limit::depth)
            stop(made.place, "maps and lists stand more than 32 deep in one another",
                 "close brackets, or indent less");
        const std::size_t byte = byte_of(mark);
        refuse_anchor(made, anchor);
        refuse_tag(made, tag, byte < text_.size() ? text_[byte] : '\0');
        const bool refused = made.kind == Node::Kind::refused;
        made.kind = kind;
        open_.push_back(
            {std::move(made), std::nullopt, style == YAML::EmitterStyle::Flow, refused});
    }

    void close() {
        Node done = std::move(open_.back().node);
        if (open_.back().refused)
            done.kind = Node::Kind::refused;
        open_.pop_back();
        add(std::move(done));
    }

    void add(Node child) {
        if (open_.empty()) {
            root_ = std::move(child);
            return;
        }
        Open& parent = open_.back();
        if (parent.node.kind == Node::Kind::list) {
            parent.node.items.push_back(std::move(child));
        } else if (!parent.key) {
            check_key(child);
            parent.key = std::move(child);
        } else {
            if (parent.key->kind == Node::Kind::scalar)
                parent.node.entries.push_back(
                    {parent.key->text, parent.key->place, std::move(child)});
            parent.key.reset();
        }
    }

    void check_key(Node& key) {
        if (key.kind == Node::Kind::refused)
            return;
        if (key.kind == Node::Kind::empty)
            refuse(key, "a key is missing before the colon", "write it as KEY: VALUE");
        else if (key.kind != Node::Kind::scalar)
            refuse(key, "a list or map stands where a key should be", "write it as KEY: VALUE");
        else if (key.text == "<<")
            refuse(key, "merge keys (<<) are not read", "write the keys out");
        else if (is_marked_key(text_, scalar_byte_))
            refuse(key, "keys marked with ? are not read", "write it as KEY: VALUE");
    }

    SourceFile source_;
    const std::string& text_;
    Faults& faults_;
    Faults run_over_;
    Cursor cursor_;
    std::vector<Open> open_;
    std::optional<Node> root_;
    std::size_t nodes_ = 0;
    std::size_t points_ = 0;
    std::size_t scalar_byte_ = 0; ///< of the last text
};

} // namespace

const Entry* Node::entry(std::string_view key) const {
    for (const Entry& candidate : entries)
        if (candidate.key == key)
            return &candidate;
    return nullptr;
}

const Node* Node::find(std::string_view key) const {
    const Entry* found = entry(key);
    return found == nullptr ? nullptr : &found->value;
}

namespace {

/// Knows only where a further document begins.
class SecondDocument : public YAML::EventHandler {
public:
    void OnDocumentStart(const YAML::Mark& mark) override {
        begins = byte_of(mark);
        throw Stop{};
    }
    void OnDocumentEnd() override {}
    void OnNull(const YAML::Mark&, YAML::anchor_t) override {}
    void OnAlias(const YAML::Mark&, YAML::anchor_t) override {}
    void OnScalar(const YAML::Mark&, const std::string&, YAML::anchor_t,
                  const std::string&) override {}
    void OnSequenceStart(const YAML::Mark&, const std::string&, YAML::anchor_t,
                         YAML::EmitterStyle::value) override {}
    void OnSequenceEnd() override {}
    void OnMapStart(const YAML::Mark&, const std::string&, YAML::anchor_t,
                    YAML::EmitterStyle::value) override {}
    void OnMapEnd() override {}

    std::optional<std::size_t> begins;
};

Fault told_second(const SourceFile& source, std::size_t byte) {
    const Place place = place_of(source, byte);
    if (source->text.compare(byte, 3, "---") == 0)
        return {Severity::file, place, "", "a second document begins here",
                "put it into a file of its own"};
    return {
        Severity::file, place, "", "this does not belong to what stands above it",
        "begin all keys of the file in the same column, and put nothing after the last bracket"};
}

/// True when nothing follows the first document.
bool is_last(YAML::Parser& parser, const SourceFile& source, Faults& faults) {
    SecondDocument second;
    try {
        parser.HandleNextDocument(second);
    } catch (const Stop&) {
    }
    if (second.begins)
        faults.push_back(told_second(source, *second.begins));
    return !second.begins;
}

std::optional<Node> tree_of(const std::shared_ptr<const Source>& source, Faults& faults) {
    if (!check_text(source, faults))
        return std::nullopt;
    std::istringstream text(source->text);
    TreeBuilder builder(source, faults);
    try {
        YAML::Parser parser(text);
        if (!parser.HandleNextDocument(builder)) {
            Node nothing;
            nothing.place = {source, 1, 1};
            return nothing;
        }
        if (!is_last(parser, source, faults))
            return std::nullopt;
        return builder.take();
    } catch (const Stop&) {
        return std::nullopt;
    } catch (const YAML::Exception& e) {
        faults.push_back(explained(source, {byte_of(e.mark), e.msg}));
        return std::nullopt;
    }
}

} // namespace

std::optional<Node> parse(const std::shared_ptr<const Source>& source, Faults& faults) {
    Faults found;
    std::optional<Node> root = tree_of(source, found);
    if (stops(found) && is_another_kind(*source))
        found = {another_kind_of_file(source)};
    faults.insert(faults.end(), found.begin(), found.end());
    return root;
}

} // namespace pelt::read
