package io.github.leafproof.dsl.parse;

import java.util.List;
import java.util.stream.Collectors;
import org.antlr.v4.runtime.CommonToken;
import org.antlr.v4.runtime.RuleContext;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.TokenSource;
import org.antlr.v4.runtime.TokenStream;
import org.antlr.v4.runtime.misc.Interval;
import org.jspecify.annotations.Nullable;

/**
 * Words as the parser takes them. All are there before it begins, and none is left out, so that nothing need be fetched,
 * copied or skipped on the way.
 */
final class WordStream implements TokenStream {

    private final List<CommonToken> words;
    private int at;

    WordStream(Words words) {
        this.words = words.list();
        for (int index = 0; index < this.words.size(); index++) {
            this.words.get(index).setTokenIndex(index);
        }
    }

    @Override
    public @Nullable Token LT(int ahead) {
        int index = ahead > 0 ? at + ahead - 1 : at + ahead;
        return ahead == 0 || index < 0 ? null : words.get(Math.min(index, words.size() - 1));
    }

    @Override
    public int LA(int ahead) {
        Token word = LT(ahead);
        return word == null ? Token.INVALID_TYPE : word.getType();
    }

    @Override
    public Token get(int index) {
        return words.get(index);
    }

    @Override
    public void consume() {
        if (at >= words.size() - 1) {
            throw new IllegalStateException("the parser reads past the end");
        }
        at++;
    }

    @Override
    public int index() {
        return at;
    }

    @Override
    public void seek(int index) {
        at = Math.min(index, words.size() - 1);
    }

    @Override
    public int size() {
        return words.size();
    }

    @Override
    public int mark() {
        return 0;
    }

    @Override
    public void release(int marker) {
        // Nothing is ever dropped, so nothing need be kept.
    }

    @Override
    public TokenSource getTokenSource() {
        return words.get(0).getTokenSource();
    }

    @Override
    public String getSourceName() {
        return getTokenSource().getSourceName();
    }

    @Override
    public String getText(Interval interval) {
        return words.subList(interval.a, Math.min(interval.b + 1, words.size())).stream()
                .filter(word -> word.getType() != Token.EOF)
                .map(Token::getText)
                .collect(Collectors.joining());
    }

    @Override
    public String getText() {
        return getText(Interval.of(0, size() - 1));
    }

    @Override
    public String getText(RuleContext part) {
        return getText(part.getSourceInterval());
    }

    @Override
    public String getText(Token first, Token last) {
        return getText(Interval.of(first.getTokenIndex(), last.getTokenIndex()));
    }
}
